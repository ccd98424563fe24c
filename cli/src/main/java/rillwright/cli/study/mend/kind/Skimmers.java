package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import rillwright.cli.file.Show;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Skimmer;

/** A wider mouth or a lower sill where a chamber runs short of water. */
public final class Skimmers implements Source {
  private static final int MOST_STEPS = 36;

  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<List<Candidate>> all = new ArrayList<>();
    if (!site.has(Need.STARVED)) {
      return all;
    }
    Unit unit = site.project().show() == Show.METRIC ? Unit.MILLIMETRE : Unit.INCH;
    double width = unit == Unit.INCH ? 1 : 20;
    double depth = unit == Unit.INCH ? 0.5 : 10;
    for (Placed<Skimmer> placed : site.network().placed(Skimmer.class)) {
      all.add(List.of(least(site, steps -> widerMouth(placed, steps * width, unit))));
      all.add(List.of(least(site, steps -> lowerSill(placed, steps * depth, unit))));
    }
    return all;
  }

  /** The least at which no chamber starves; the most that is tried if there is none. */
  private static Candidate least(Site site, IntFunction<Step> change) {
    int least =
        LeastSteps.find(
                1,
                MOST_STEPS,
                steps ->
                    site.with(change.apply(steps).set())
                        .filter(state -> !state.starves())
                        .isPresent())
            .orElse(MOST_STEPS);
    return Candidate.of(change.apply(least));
  }

  /** A mouth that is wider, in a unit. */
  static Step widerMouth(Placed<Skimmer> placed, double more, Unit unit) {
    double width = unit.fromSi(placed.part().widthM()) + more;
    return step(
        Action.WIDER_MOUTH,
        placed,
        unit.toSi(width),
        List.of(Addresses.ofPart(placed, "width", Addresses.size(width, unit))));
  }

  /** A sill that is lower, in a unit; the top of the mouth, if it is known, stays. */
  static Step lowerSill(Placed<Skimmer> placed, double less, Unit unit) {
    double sill = unit.fromSi(placed.part().sillM()) - less;
    List<String> set = new ArrayList<>();
    set.add(Addresses.ofPart(placed, "sill", Addresses.size(sill, unit)));
    placed
        .part()
        .heightM()
        .ifPresent(
            height ->
                set.add(
                    Addresses.ofPart(
                        placed, "height", Addresses.size(unit.fromSi(height) + less, unit))));
    return step(Action.LOWER_SILL, placed, unit.toSi(sill), set);
  }

  private static Step step(Action action, Placed<Skimmer> placed, double sizeM, List<String> set) {
    return new Step(
        action, placed.line().name().value(), "", sizeM, "", set, OptionalDouble.empty());
  }
}
