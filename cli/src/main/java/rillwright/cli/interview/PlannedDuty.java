package rillwright.cli.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;
import rillwright.curves.unit.Unit;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.pumping.Targets;
import rillwright.solver.study.duty.Duty;
import rillwright.solver.study.duty.DutyFinder;
import rillwright.solver.water.Water;

/**
 * A flow and head to plan for while no pump is chosen: {@code 2400 gph at 9 ft}.
 *
 * @param flow as written
 * @param head as written
 * @param flowM3PerS above 0
 * @param headM above 0
 */
record PlannedDuty(String flow, String head, double flowM3PerS, double headM) {
  private static final Pattern AT = Pattern.compile("(.+?)\\s+at\\s+(.+)");

  /** Shares of the flow at which the invented curve has points. */
  private static final double[] SHARES = {0, 0.5, 1, 1.5, 1.9};

  /** Head at no flow, as a share of the head planned for: invented, as the whole curve is. */
  private static final double SHUT_OFF = 1.35;

  /** The duty that an answer names; empty if it names none. */
  static Optional<PlannedDuty> read(String answer) throws NotAQuantity {
    Matcher parts = AT.matcher(answer.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    Measure heads = Measure.headIn(Water.at(Water.USUAL_TEMPERATURE_C).densityKgPerM3());
    return Optional.of(
        new PlannedDuty(
            parts.group(1),
            parts.group(2),
            QuantityReader.read(parts.group(1), Measure.FLOW, Range.POSITIVE).middle(),
            QuantityReader.read(parts.group(2), heads, Range.POSITIVE).middle()));
  }

  /** Points of an invented curve through it, falling as a parabola: flow and head, as written. */
  List<String> points(boolean metric) {
    List<String> points = new ArrayList<>();
    for (double share : SHARES) {
      double shareOfHead = SHUT_OFF - (SHUT_OFF - 1) * share * share;
      points.add(
          share == 1
              ? point(flow, head)
              : point(
                  Written.flow(share * flowM3PerS, metric),
                  Written.head(shareOfHead * headM, metric)));
    }
    return points;
  }

  private static String point(String flow, String head) {
    return "{flow: " + Written.yaml(flow) + ", head: " + Written.yaml(head) + "}";
  }

  /**
   * The duty of what was answered: what the falls' targets ask of a pump, rounded up; a usual one
   * where that cannot be met or nothing is asked.
   */
  static String suggestedFor(Answers answers) {
    boolean metric = answers.isMetric();
    return dutyOf(answers)
        .map(duty -> roundedUp(duty.flowM3PerS(), duty.headM(), metric))
        .orElse(metric ? "9 m3/h at 3 m" : "2400 gph at 10 ft");
  }

  private static Optional<Duty.AsTheyStand> dutyOf(Answers answers) {
    try {
      Project project = Draft.withoutPump(answers).project();
      if (Targets.of(project.network()).isEmpty()) {
        return Optional.empty();
      }
      PumpPlace place = PumpPlace.listPlanned(project.network()).get(0);
      return DutyFinder.find(project.network(), place)
          .asTheyStand()
          .filter(duty -> duty.headM() > 0 && duty.flowM3PerS() > 0);
    } catch (InvalidInput wrongSoFar) {
      return Optional.empty();
    }
  }

  private static String roundedUp(double flowM3PerS, double headM, boolean metric) {
    double flowStep = metric ? Unit.CUBIC_METRE_PER_HOUR.toSi(0.1) : Unit.GALLON_PER_HOUR.toSi(50);
    double headStep = metric ? 0.1 : Unit.FOOT.toSi(0.5);
    return Written.flow(Math.ceil(flowM3PerS / flowStep) * flowStep, metric)
        + " at "
        + Written.head(Math.ceil(headM / headStep) * headStep, metric);
  }
}
