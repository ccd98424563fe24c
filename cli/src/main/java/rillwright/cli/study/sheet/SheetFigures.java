package rillwright.cli.study.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.fact.Nameplate;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.pump.BestEfficiency;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpSet;

/**
 * A data sheet and what follows from it.
 *
 * @param model the file's name without its ending
 * @param sheet as read
 * @param plate what the supply is: that of the sheet, or on a voltage that was asked for
 * @param densityKgPerM3 of the water
 */
public record SheetFigures(String model, DataSheet sheet, Nameplate plate, double densityKgPerM3) {
  /**
   * A point of the curve.
   *
   * @param flowM3PerS m³/s
   * @param headM m
   * @param powerW from the wire, W, where known
   * @param wireToWater ρ g Q H / P, where known
   */
  public record CurveFigures(
      double flowM3PerS, double headM, OptionalDouble powerW, OptionalDouble wireToWater) {}

  /** The curve. */
  public PumpCurve curve() {
    return sheet.curve();
  }

  /** One of it at full speed. */
  public PumpSet set() {
    return new PumpSet(curve(), 1, 1, PumpSet.Arrangement.PARALLEL, Optional.empty());
  }

  /** The curve at a flow, m³/s. */
  public CurveFigures at(double flowM3PerS) {
    return figures(flowM3PerS, curve().headAt(flowM3PerS), curve().powerAt(flowM3PerS));
  }

  /** The points as published. */
  public Stream<CurveFigures> published() {
    return curve().points().stream()
        .map(point -> figures(point.flowM3PerS(), point.headM(), point.powerW()));
  }

  private CurveFigures figures(double flow, double head, OptionalDouble power) {
    double water = densityKgPerM3 * Gravity.STANDARD_M_PER_S2 * flow * head;
    return new CurveFigures(
        flow,
        head,
        power,
        power.orElse(0) > 0
            ? OptionalDouble.of(water / power.getAsDouble())
            : OptionalDouble.empty());
  }

  /** Where it makes the most flow and head of a watt; empty if the sheet gives no power. */
  public Optional<CurveFigures> best() {
    OptionalDouble flow = BestEfficiency.flowM3PerS(curve());
    return flow.isPresent() ? Optional.of(at(flow.getAsDouble())) : Optional.empty();
  }

  /** The power that it is rated for, or the largest of its curve, W; empty without either. */
  public OptionalDouble ratedPowerW() {
    return plate.ratedPowerW().isPresent() ? plate.ratedPowerW() : set().publishedLargestPowerW();
  }

  /** The current at a power, where both are known. */
  public Optional<MeterCurrent> currentAt(OptionalDouble powerW) {
    return powerW.isPresent() ? MeterCurrent.at(powerW.getAsDouble(), plate) : Optional.empty();
  }
}
