package rillwright.solver.finding;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rillwright.solver.network.Network;
import rillwright.solver.steady.SteadyState;

/** All that the crew should know about a network or its steady state, the gravest first. */
public final class Findings {
  /** From so many lines on the detectors take longer than to call up other processors. */
  private static final int LARGE = 2000;

  private static final Set<String> OF_SUCTION =
      Set.of("low-submergence", "npsh-short", "not-primed");

  private static final List<NetworkDetector> OF_NETWORKS =
      List.of(
          new SkimmerDetector(),
          new LayoutDetector(),
          new ShortRunDetector(),
          new ReachDetector(),
          new SuctionLiftDetector(),
          new DoubtfulTargetDetector(),
          new DoubtfulSheetDetector());

  private static final List<Detector> OF_FAILING =
      List.of(new ChamberDetector(), new PumpRangeDetector(), new OverflowDetector());

  private static final List<Detector> DETECTORS =
      List.of(
          new ChamberDetector(),
          new MissedTargetDetector(),
          new SheetDetector(),
          new ClosedLineDetector(),
          new PumpPowerDetector(),
          new PumpRangeDetector(),
          new ReachDetector(),
          new TouchyPumpDetector(),
          new VelocityDetector(),
          new SlowLineDetector(),
          new FlutterDetector(),
          new HighPointDetector(),
          new SuctionDetector(),
          new ScreenDetector(),
          new RunBackDetector(),
          new OpenSuctionDetector(),
          new OverflowDetector(),
          new HeldBasinDetector(),
          new MatsDetector(),
          new PressureDetector());

  private Findings() {}

  /** The findings of a network before anything flows: what it says that can hardly be. */
  public static List<Finding> of(Network network) {
    return asked(OF_NETWORKS, network).flatMap(it -> it.findIn(network).stream()).toList();
  }

  /**
   * The findings of a steady state and of its network. That a pump's shut-off head does not reach
   * is shown by what flows then; by a levelled curve water may flow all the same.
   */
  public static List<Finding> of(SteadyState state) {
    return Stream.concat(
            of(state.network()).stream()
                .filter(it -> !it.code().equals(ReachDetector.BEYOND_SHUT_OFF)),
            asked(DETECTORS, state.network()).flatMap(it -> it.findIn(state).stream()))
        .toList();
  }

  /** Detectors, in their order; all processors ask them of a network that keeps one busy. */
  private static <D> Stream<D> asked(List<D> detectors, Network network) {
    Stream<D> stream = detectors.stream();
    return network.lines().size() < LARGE ? stream : stream.parallel();
  }

  /** Those of what does not do what it is there for, as far as the state itself shows that. */
  public static List<Finding> ofFailing(SteadyState state) {
    return OF_FAILING.stream().flatMap(detector -> detector.findIn(state).stream()).toList();
  }

  /** Those by which a pump lacks at its inlet what it asks for. */
  public static List<Finding> ofSuction(SteadyState state) {
    return ofSuction(new SuctionDetector().findIn(state));
  }

  /** Those of some findings by which a pump lacks at its inlet what it asks for. */
  public static List<Finding> ofSuction(List<Finding> findings) {
    return findings.stream().filter(finding -> OF_SUCTION.contains(finding.code())).toList();
  }
}
