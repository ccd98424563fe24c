package rillwright.solver.finding;

import java.util.List;
import rillwright.solver.steady.SteadyState;

/** All that the crew should know about a steady state, the gravest first. */
public final class Findings {
  private static final List<Detector> DETECTORS =
      List.of(
          new ChamberDetector(),
          new LayoutDetector(),
          new WishDetector(),
          new SheetDetector(),
          new ClosedLineDetector(),
          new PumpPowerDetector(),
          new PumpRangeDetector(),
          new TouchyPumpDetector(),
          new VelocityDetector(),
          new SlowLineDetector(),
          new HighPointDetector(),
          new SuctionDetector(),
          new RunBackDetector(),
          new OpenSuctionDetector(),
          new OverflowDetector());

  private Findings() {}

  /** The findings of a steady state. */
  public static List<Finding> of(SteadyState state) {
    return DETECTORS.stream()
        .map(detector -> detector.findIn(state))
        .flatMap(List::stream)
        .toList();
  }
}
