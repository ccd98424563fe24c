package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rillwright.solver.finding.Figure.Unit;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.TerracedPond;

/** What there is to know about a basin's levels. */
final class LevelFindings {
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
      findings.add(
          at(
                  Severity.NOTE,
                  "area-not-known",
                  "The area of \"" + name + "\" is not in the file, so its levels are not known.")
              .thenHint());
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
    findings.add(
        at(Severity.PROBLEM, code, "At rest \"" + name + "\" would stand ")
            .depth("aboveMark", aboveM)
            .then(
                " above "
                    + mark
                    + ": what stands above it "
                    + does
                    + " before the pump ever runs. Check the sign, and that all levels are measured"
                    + " from one mark."));
  }

  private void starving() {
    if (budget.starveLevelM().isEmpty() || budget.runningLevelM().isEmpty()) {
      return;
    }
    double room = budget.runningLevelM().getAsDouble() - budget.starveLevelM().getAsDouble();
    double days = budget.daysToStarve().orElse(Double.POSITIVE_INFINITY);
    Holding holding = Holding.of(running, budget);
    boolean air = budget.starve().get().drawsAir();
    if (holding == Holding.AT_ITS_LIMIT && air) {
      findings.add(
          at(
                  Severity.PROBLEM,
                  "draws-air-running",
                  "While the pump runs, the water of \"" + name + "\" stands ")
              .depth("belowStarveLevel", Math.max(0, -room))
              .then(
                  " below the level at which the pump begins to draw air. Fill it higher, make it"
                      + " larger, set the intake deeper, or keep less water in the stream."));
    } else if (holding == Holding.AT_ITS_LIMIT && room >= -NOTICEABLE_M) {
      findings.add(
          at(
              Severity.PROBLEM,
              "skimmer-at-its-limit",
              "While the pump runs, the skimmer of \""
                  + name
                  + "\" passes no more than what runs now: each further drop of the level reduces"
                  + " the flow, until the chamber is drawn down to the pump's intake. A lower sill,"
                  + " a wider mouth or a higher level gives it room."));
    } else if (holding == Holding.NEEDS_TOPPING_UP) {
      findings.add(
          at(
                  Severity.ADVICE,
                  "starves-without-topping-up",
                  "While the pump runs \"" + name + "\" stands only ")
              .depth("aboveStarveLevel", Math.max(0, room))
              .then(
                  air
                      ? " above the level at which the pump draws air, "
                      : " above the level at which its skimmer starves, ")
              .figure("daysToStarve", days, Unit.DAY, wording -> days(days))
              .then(
                  " of evaporation and splash. Top up through an air gap, or give it room: "
                      + (air
                          ? "a deeper intake, a larger reservoir."
                          : "a lower sill, a wider mouth, a wider pond.")));
    } else if (holding.compareTo(Holding.NEEDS_TOPPING_UP) > 0) {
      inDoubt(air);
    }
  }

  /** Less water above the level at which it starves than the streams may well hold besides. */
  private void inDoubt(boolean air) {
    double moreM3 = running.moreInTransitFromM3(budget.basin().name());
    double leftM3 = budget.volumeToStarveM3().orElse(Double.POSITIVE_INFINITY);
    if (leftM3 < moreM3) {
      findings.add(
          at(
                  Severity.ADVICE,
                  "starves-if-more-in-transit",
                  "While the pump runs \"" + name + "\" holds only ")
              .volume("aboveStarveLevel", leftM3)
              .then(" above the level at which ")
              .then(air ? "the pump draws air; " : "its skimmer starves; ")
              .volume("moreInTransit", moreM3)
              .then(
                  " more may be in transit than is computed, since the roughness of a bed is an"
                      + " estimate. Give it room: "
                      + (air
                          ? "a deeper intake, a larger reservoir."
                          : "a lower sill, a wider mouth, a wider pond.")));
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
      findings.add(
          at(Severity.PROBLEM, "over-liner-edge", "When the pump stops, \"" + name + "\" rises ")
              .depth("aboveLinerEdge", stopped - edge)
              .then(
                  " above its liner's edge and is lost into the ground, if it was topped up while"
                      + " running. Raise the edge, widen the pond, or top up with the pump off."));
    } else if (budget.runsOverM3() > 0 && budget.restLevelM() <= budget.overflowM().getAsDouble()) {
      findings.add(
          at(
                  Severity.PROBLEM,
                  "runs-over-at-stop",
                  "When the pump stops, \"" + name + "\" would rise to ")
              .depth("aboveOverflow", stopped - budget.overflowM().getAsDouble())
              .then(
                  " above its overflow, if it was topped up while running; what stands above it"
                      + " is lost at each stop and must be topped up again. "
                      + (running.state().starves()
                          ? "Lead the overflow somewhere safe; once the pump stays supplied without"
                              + " topping up, top up with it off."
                          : "Top up with the pump off, or lead the overflow somewhere safe.")));
    }
  }

  /** An overflow over which nothing can run, because the water would leave elsewhere first. */
  private void overflow() {
    Basin basin = budget.basin();
    double edge = Freeboard.edgeM(basin);
    double above = basin.overflowM().orElse(Double.NEGATIVE_INFINITY) - edge;
    if (above > 0) {
      findings.add(
          at(Severity.PROBLEM, "overflow-above-edge", "The overflow of \"" + name + "\" lies ")
              .depth("aboveEdge", above)
              .then(
                  " above its liner's edge or grade, so water leaves there first and not by"
                      + " the overflow."));
    }
  }

  /** A skimmer's sill below the floor of its pond. */
  private void floor() {
    double floor = budget.basin().shape().map(BasinShape::floorM).orElse(Double.NEGATIVE_INFINITY);
    for (Skimmer skimmer : running.state().network().skimmersOf(budget.basin().name())) {
      if (skimmer.sillM() < floor) {
        findings.add(
            at(Severity.PROBLEM, "sill-below-floor", "A skimmer's sill lies ")
                .depth("belowFloor", floor - skimmer.sillM())
                .then(" below the floor of \"" + name + "\": check the signs of both."));
      }
    }
  }

  private void mouths() {
    for (Skimmer skimmer : running.state().network().skimmersOf(budget.basin().name())) {
      skimmer.mouthTopM().ifPresent(this::mouth);
      sill(skimmer);
    }
  }

  private void mouth(double topM) {
    double rest = budget.restLevelM();
    double overflow = budget.overflowM().orElse(topM);
    double stopped = budget.stoppedLevelM().orElse(rest);
    if (rest > topM - Freeboard.BELOW_MOUTH_TOP_M + NOTICEABLE_M) {
      findings.add(
          besides(
                  at(Severity.ADVICE, "near-mouth-top", "At rest \"" + name + "\" stands "),
                  "belowMouthTop",
                  topM - rest)
              .then(" the top of the skimmer's mouth; ")
              .depth("usualLeast", Freeboard.BELOW_MOUTH_TOP_M)
              .then(" or more below is common practice, so that the mouth skims."));
    } else if (Math.min(stopped, overflow) > topM + NOTICEABLE_M) {
      findings.add(
          at(
              Severity.ADVICE,
              "mouth-drowned-at-stop",
              "After a stop \""
                  + name
                  + "\" stands above the top of the skimmer's mouth, which then skims nothing; the"
                  + " overflow is best as high as the mouth's top (common practice)."));
    }
  }

  private void sill(Skimmer skimmer) {
    double lowest = budget.runningLevelM().orElse(budget.restLevelM());
    if (lowest < skimmer.sillM() - NOTICEABLE_M) {
      findings.add(
          at(Severity.PROBLEM, "below-sill", "Running, \"" + name + "\" would stand ")
              .depth("belowSill", skimmer.sillM() - lowest)
              .then(" below the skimmer's sill: nothing comes in, and the pump runs dry."));
    }
  }

  private void grade() {
    double grade = budget.basin().gradeM().orElse(Double.POSITIVE_INFINITY);
    double room = grade - budget.restLevelM();
    if (room < Freeboard.BELOW_GRADE_M - NOTICEABLE_M) {
      findings.add(
          besides(
                  at(Severity.ADVICE, "near-grade", "At rest \"" + name + "\" stands "),
                  "belowGrade",
                  room)
              .then(" grade; ")
              .depth("usualLeast", Freeboard.SAID_BELOW_GRADE_M)
              .then(" or more below is common practice."));
    }
  }

  /** Shelves that lie too far under water, or under each other, to stand on. */
  private void shelves() {
    double above = budget.restLevelM();
    for (double shelf : budget.basin().shape().map(BasinShape::shelvesM).orElse(List.of())) {
      double step = above - shelf;
      if (step > TerracedPond.USUAL_STEP_M + NOTICEABLE_M) {
        findings.add(
            at(Severity.ADVICE, "deep-shelf", "A shelf of \"" + name + "\" lies ")
                .depth("step", step)
                .then(" below what is above it; steps of ")
                .depth("usualGreatestStep", TerracedPond.USUAL_STEP_M)
                .then(
                    " at most are common practice: a bank that stands, and a way out of the"
                        + " water."));
        return;
      }
      above = Math.min(above, shelf);
    }
  }

  private Finding at(Severity severity, String code, String words) {
    return Finding.of(severity, code, name, words);
  }

  /** Then by how much it stands below a mark, or above it where that is negative. */
  private static Finding besides(Finding finding, String figure, double belowM) {
    return finding
        .figure(figure, belowM, Unit.METRE, wording -> wording.depth(Math.abs(belowM)))
        .then(belowM < 0 ? " above" : " below");
  }
}
