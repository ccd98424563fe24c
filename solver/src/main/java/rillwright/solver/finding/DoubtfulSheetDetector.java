package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;

/**
 * Data sheets of pumps that no pump has, and that would be usual in another unit: of flow by 60,
 * 1,000 or 3.6 (minutes for hours, litres for cubic metres, litres a second for cubic metres an
 * hour), of head by 2.31 (psi for feet). A sheet with powers is judged by the best share of them
 * that reaches the water, one without by the speed in its line's pipe at its last flow.
 */
public final class DoubtfulSheetDetector implements NetworkDetector {
  private static final String CODE = "doubtful-sheet";
  private static final double FEET_A_PSI = 2.31;

  /** Shares of the electrical power that reach the water; common practice, no source. */
  private static final Usual EFFICIENCY = new Usual(0.01, 0.85, 0.12, 0.75);

  /** Speeds in the pipe at the sheet's last flow, m/s; common practice, no source. */
  private static final Usual SPEED_M_PER_S = new Usual(0.05, 20, 0.5, 8);

  /** Below and above which nothing is believed, and between which a thing usually is. */
  private record Usual(double least, double greatest, double usualLeast, double usualGreatest) {
    boolean isDoubtful(double value) {
      return value > 0 && (value < least || value > greatest);
    }

    /** Of some factors those by which a doubtful value is off. */
    List<Double> factors(double value, double... factors) {
      DoublePredicate fits =
          factor -> {
            double other = value > greatest ? value / factor : value * factor;
            return other >= usualLeast && other <= usualGreatest;
          };
      return DoubleStream.of(factors).filter(fits).boxed().toList();
    }

    String way(double value) {
      return value > greatest ? "smaller" : "larger";
    }
  }

  @Override
  public List<Finding> findIn(Network network) {
    List<Finding> findings = new ArrayList<>();
    for (Placed<Pump> pump : network.placed(Pump.class)) {
      PumpCurve curve = pump.part().set().curve();
      OptionalDouble best = bestEfficiency(curve, network.water().densityKgPerM3());
      Optional<Finding> finding =
          best.isPresent() ? byPower(doubtful(pump), best.getAsDouble()) : bySpeed(pump);
      finding.ifPresent(findings::add);
    }
    return findings;
  }

  /**
   * The same of a sheet alone, by its powers; empty if nothing is doubtful or it gives none.
   *
   * @param at what the finding is about
   */
  public static Optional<Finding> find(PumpCurve curve, double densityKgPerM3, String at) {
    OptionalDouble best = bestEfficiency(curve, densityKgPerM3);
    return best.isPresent()
        ? byPower(Finding.of(Severity.ADVICE, CODE, at, ""), best.getAsDouble())
        : Optional.empty();
  }

  /** The greatest of a sheet's published points; empty without powers. */
  private static OptionalDouble bestEfficiency(PumpCurve curve, double densityKgPerM3) {
    return curve.points().stream()
        .filter(point -> point.powerW().orElse(0) > 0)
        .mapToDouble(
            point ->
                densityKgPerM3
                    * Gravity.STANDARD_M_PER_S2
                    * point.flowM3PerS()
                    * point.headM()
                    / point.powerW().getAsDouble())
        .max();
  }

  private static Optional<Finding> byPower(Finding opening, double best) {
    List<Double> ofFlow = EFFICIENCY.factors(best, 60, 1000, 3.6);
    List<Double> ofHead = EFFICIENCY.factors(best, FEET_A_PSI);
    if (!EFFICIENCY.isDoubtful(best) || (ofFlow.isEmpty() && ofHead.isEmpty())) {
      return Optional.empty();
    }
    Finding start =
        opening
            .share("wireToWater", best)
            .then(" of its electrical power reaches the water at best. It would be usual ");
    return Optional.of(shown(start, ofFlow, ofHead, EFFICIENCY.way(best)));
  }

  private static Optional<Finding> bySpeed(Placed<Pump> pump) {
    double flow = pump.part().set().publishedRangeM3PerS();
    double speed = pump.line().mainBore().map(bore -> bore.velocityAt(flow)).orElse(0.0);
    List<Double> ofFlow = SPEED_M_PER_S.factors(speed, 60, 1000, 3.6);
    if (!SPEED_M_PER_S.isDoubtful(speed) || ofFlow.isEmpty()) {
      return Optional.empty();
    }
    Finding start =
        doubtful(pump)
            .writtenFlow("flow", flow)
            .then(" is its last flow, ")
            .velocity("velocity", speed)
            .then(" in the pipe of its line. It would be usual ");
    return Optional.of(shown(start, ofFlow, List.of(), SPEED_M_PER_S.way(speed)));
  }

  private static Finding doubtful(Placed<Pump> pump) {
    String at = pump.line().name().value();
    String opening = "The data sheet of \"" + pump.part().model() + "\" in \"" + at + "\": ";
    return Finding.of(Severity.ADVICE, CODE, at, opening);
  }

  private static Finding shown(
      Finding start, List<Double> ofFlow, List<Double> ofHead, String way) {
    Finding shown = start;
    String joint = "with ";
    for (double factor : ofFlow) {
      shown = factor(shown, "flowFactor", joint + "flows ", factor);
      joint = ", or with ";
    }
    for (double factor : ofHead) {
      shown = factor(shown, "headFactor", joint + "heads ", factor);
    }
    return shown.then(" times " + way + ": check the units of its columns.");
  }

  private static Finding factor(Finding finding, String name, String words, double factor) {
    return finding
        .then(words)
        .figure(
            name,
            factor,
            Figure.Unit.ONE,
            units -> factor == Math.rint(factor) ? "" + (int) factor : "" + factor);
  }
}
