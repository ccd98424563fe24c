package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Wording;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.TerracedPond;

/** What there is to know about a basin's levels. */
final class LevelFindings {
  private static final double INCH = 0.0254;

  /** Room between the water at rest and the ground; common practice, no source. */
  private static final double BELOW_GRADE_M = 3 * INCH;

  /** Room between the water at rest and the top of the skimmer's mouth; common practice. */
  private static final double BELOW_MOUTH_TOP_M = INCH;

  private static final double NOTICEABLE_M = 0.003;

  private final LevelBudget budget;
  private final RunningWater running;
  private final List<Finding> findings = new ArrayList<>();
  private final String name;

  LevelFindings(LevelBudget budget, RunningWater running) {
    this.budget = budget;
    this.running = running;
    this.name = budget.basin().name().value();
  }

  List<Finding> list() {
    if (budget.basin().shape().isEmpty() && running.transit().totalM3() > 0) {
      add(
          "area-not-known",
          words ->
              "The area of \""
                  + name
                  + "\" is not in the file, so its levels cannot be told; write for example \"area:"
                  + " 200 ft2\".");
    }
    atRest();
    starving();
    stopping();
    overflow();
    floor();
    mouths();
    grade();
    shelves();
    return findings;
  }

  /** Marks under which the water at rest cannot stay. */
  private void atRest() {
    Basin basin = budget.basin();
    double rest = budget.restLevelM();
    double edge = basin.linerEdgeM().orElse(Double.POSITIVE_INFINITY);
    double overflow = basin.overflowM().orElse(Double.POSITIVE_INFINITY);
    if (rest > edge) {
      standsAbove("rest-above-liner-edge", "its liner's edge", rest - edge, "seeps away");
    } else if (rest > overflow) {
      standsAbove("rest-above-overflow", "its overflow", rest - overflow, "runs over");
    }
  }

  private void standsAbove(String code, String mark, double aboveM, String does) {
    add(
        code,
        words ->
            "At rest \""
                + name
                + "\" would stand "
                + words.depth(aboveM)
                + " above "
                + mark
                + ": what stands above it "
                + does
                + " before the pump ever runs. See the sign, and that all levels are measured from"
                + " one mark.");
  }

  private void starving() {
    if (budget.starveLevelM().isEmpty() || budget.runningLevelM().isEmpty()) {
      return;
    }
    double room = budget.runningLevelM().getAsDouble() - budget.starveLevelM().getAsDouble();
    double days = budget.daysToStarve().orElse(Double.POSITIVE_INFINITY);
    Holding holding = Holding.of(running, budget);
    if (holding == Holding.AT_ITS_LIMIT) {
      add(
          "skimmer-at-its-limit",
          words ->
              "While the pump runs, the skimmer of \""
                  + name
                  + "\" passes no more than what runs now: every bit by which the level falls takes"
                  + " from the flow, until the chamber is drawn down to the pump's intake. A lower"
                  + " sill, a wider mouth or a higher level gives it room.");
    } else if (holding == Holding.NEEDS_TOPPING_UP) {
      add(
          "starves-without-topping-up",
          words ->
              "While the pump runs \""
                  + name
                  + "\" stands only "
                  + words.depth(Math.max(0, room))
                  + " above the level at which its skimmer starves, "
                  + days(days)
                  + " of evaporation and splash. Top up through an air gap, or give it room: a lower"
                  + " sill, a wider mouth, a wider pond.");
    }
  }

  /** A number of days as a person says it. */
  static String days(double days) {
    return days < 2 ? String.format(Locale.ROOT, "%.1f days", days) : Math.round(days) + " days";
  }

  private void stopping() {
    Basin basin = budget.basin();
    if (budget.stoppedLevelM().isEmpty()) {
      return;
    }
    double stopped = budget.stoppedLevelM().getAsDouble();
    double edge = basin.linerEdgeM().orElse(Double.POSITIVE_INFINITY);
    if (stopped > edge && budget.restLevelM() <= edge) {
      add(
          "over-liner-edge",
          words ->
              "When the pump stops, \""
                  + name
                  + "\" rises "
                  + words.depth(stopped - edge)
                  + " above its liner's edge and runs away into the ground, if it was topped up while"
                  + " running. Raise the edge, widen the pond, or top up with the pump off.");
    } else if (budget.runsOverM3() > 0 && budget.restLevelM() <= budget.overflowM().getAsDouble()) {
      add(
          "runs-over-at-stop",
          words ->
              "When the pump stops, \""
                  + name
                  + "\" would rise to "
                  + words.depth(stopped - budget.overflowM().getAsDouble())
                  + " above its overflow, if it was topped up while running; what stands above it runs"
                  + " away at each stop and must be filled up again. Top up with the pump off, or"
                  + " lead the overflow somewhere safe.");
    }
  }

  /** An overflow over which nothing can run, because the water would leave elsewhere first. */
  private void overflow() {
    Basin basin = budget.basin();
    double edge =
        Math.min(
            basin.linerEdgeM().orElse(Double.POSITIVE_INFINITY),
            basin.gradeM().orElse(Double.POSITIVE_INFINITY));
    double above = basin.overflowM().orElse(Double.NEGATIVE_INFINITY) - edge;
    if (above > 0) {
      add(
          "overflow-above-edge",
          words ->
              "The overflow of \""
                  + name
                  + "\" lies "
                  + words.depth(above)
                  + " above its liner's edge or the ground, so water leaves there first and not by"
                  + " the overflow.");
    }
  }

  /** A skimmer's sill below the floor of its pond. */
  private void floor() {
    double floor = budget.basin().shape().map(BasinShape::floorM).orElse(Double.NEGATIVE_INFINITY);
    for (Skimmer skimmer : running.state().network().skimmersOf(budget.basin().name())) {
      if (skimmer.sillM() < floor) {
        add(
            "sill-below-floor",
            words ->
                "A skimmer's sill lies "
                    + words.depth(floor - skimmer.sillM())
                    + " below the floor of \""
                    + name
                    + "\": see the signs of both.");
      }
    }
  }

  private void mouths() {
    for (Skimmer skimmer : running.state().network().skimmersOf(budget.basin().name())) {
      skimmer.mouthTopM().ifPresent(top -> mouth(skimmer, top));
    }
  }

  private void mouth(Skimmer skimmer, double topM) {
    double rest = budget.restLevelM();
    double overflow = budget.overflowM().orElse(topM);
    double stopped = budget.stoppedLevelM().orElse(rest);
    if (rest > topM - BELOW_MOUTH_TOP_M + NOTICEABLE_M) {
      add(
          "near-mouth-top",
          words ->
              "At rest \""
                  + name
                  + "\" stands "
                  + words.depth(Math.abs(topM - rest))
                  + (rest > topM ? " above" : " below")
                  + " the top of the skimmer's mouth; "
                  + words.depth(BELOW_MOUTH_TOP_M)
                  + " or more below is common practice, so that the mouth skims.");
    } else if (Math.min(stopped, overflow) > topM + NOTICEABLE_M) {
      add(
          "mouth-drowned-at-stop",
          words ->
              "After a stop \""
                  + name
                  + "\" stands above the top of the skimmer's mouth, which then skims nothing; the"
                  + " overflow is best as high as the mouth's top (common practice).");
    }
    double lowest = budget.runningLevelM().orElse(rest);
    if (lowest < skimmer.sillM() - NOTICEABLE_M) {
      add(
          "below-sill",
          words ->
              "Running, \""
                  + name
                  + "\" would stand "
                  + words.depth(skimmer.sillM() - lowest)
                  + " below the skimmer's sill: nothing comes in.");
    }
  }

  private void grade() {
    double grade = budget.basin().gradeM().orElse(Double.POSITIVE_INFINITY);
    double room = grade - budget.restLevelM();
    if (room < BELOW_GRADE_M - NOTICEABLE_M) {
      add(
          "near-grade",
          words ->
              "At rest \""
                  + name
                  + "\" stands "
                  + words.depth(Math.abs(room))
                  + (room < 0 ? " above" : " below")
                  + " the ground; "
                  + words.depth(BELOW_GRADE_M)
                  + " or more below is common practice.");
    }
  }

  /** Shelves that lie too far under water, or under each other, to stand on. */
  private void shelves() {
    double above = budget.restLevelM();
    for (double shelf : budget.basin().shape().map(BasinShape::shelvesM).orElse(List.of())) {
      double step = above - shelf;
      if (step > TerracedPond.USUAL_STEP_M + NOTICEABLE_M) {
        add(
            "deep-shelf",
            words ->
                "A shelf of \""
                    + name
                    + "\" lies "
                    + words.depth(step)
                    + " below what is above it; steps of "
                    + words.depth(TerracedPond.USUAL_STEP_M)
                    + " at most are common practice: a bank that stands, and a way out of the"
                    + " water.");
        return;
      }
      above = Math.min(above, shelf);
    }
  }

  private void add(String code, Function<Wording, String> told) {
    findings.add(new StreamFinding(code, name, told));
  }
}
