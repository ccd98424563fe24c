package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Screen;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;

/** Screens and cages through which the water comes too fast. */
final class ScreenDetector implements Detector {
  /**
   * Greatest approach speed, m/s, so that leaves and small animals come off again. Source: US
   * National Marine Fisheries Service, criteria for pump intakes, addendum: 0.2 ft/s at passive
   * screens; made for young salmon.
   */
  private static final double APPROACH_M_PER_S = 0.06;

  /**
   * Greatest speed through the holes where a person can reach them, m/s. Source: Nevada
   * Administrative Code 444.158(3), 444.480(2), suction covers of public pools: 1.5 ft/s. Newer
   * practice (ANSI/APSP-16) rates covers by a tested flow.
   */
  private static final double THROUGH_M_PER_S = 0.46;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (LineState line : state.lines()) {
      String at = line.line().name().value();
      if (line.flowM3PerS() > 0) {
        check(at, line.line().entrance().screen(), line.flowM3PerS(), findings);
        for (PartState part : line.parts()) {
          if (part.part() instanceof Pump pump) {
            double flow = pump.set().flowOfOne(part.flowM3PerS());
            check(at, pump.inlet().screen(), flow, findings);
          }
        }
      }
    }
    return findings;
  }

  private static void check(
      String at, Optional<Screen> given, double flowM3PerS, List<Finding> findings) {
    given
        .filter(screen -> screen.throughMPerS(flowM3PerS) > THROUGH_M_PER_S)
        .ifPresent(screen -> findings.add(tooFast(at, screen.throughMPerS(flowM3PerS))));
    given
        .filter(screen -> screen.approachMPerS(flowM3PerS) > APPROACH_M_PER_S)
        .ifPresent(screen -> findings.add(fast(at, screen.approachMPerS(flowM3PerS))));
  }

  private static Finding tooFast(String at, double speed) {
    return Finding.of(
            Severity.DANGER, "screen-holds-people", at, "Through the holes of its screen \"" + at)
        .then("\" draws at ")
        .velocity("throughSpeed", speed)
        .then("; where a person can reach it a published limit for suction covers is ")
        .velocity("greatest", THROUGH_M_PER_S)
        .then(
            ". Hair, fingers and children can be held: take a larger screen, or two intakes apart,"
                + " as local code asks, and keep people away from it.");
  }

  private static Finding fast(String at, double speed) {
    return Finding.of(Severity.ADVICE, "screen-fast", at, "Water comes up to the screen of \"" + at)
        .then("\" at ")
        .velocity("approachSpeed", speed)
        .then("; up to ")
        .velocity("greatest", APPROACH_M_PER_S)
        .then(", a published limit for intakes, leaves and small animals come off again. It takes ")
        .figure(
            "areaFactor",
            speed / APPROACH_M_PER_S,
            Figure.Unit.ONE,
            words -> String.format(Locale.ROOT, "%.1f", speed / APPROACH_M_PER_S))
        .then(" times the area to get there.");
  }
}
