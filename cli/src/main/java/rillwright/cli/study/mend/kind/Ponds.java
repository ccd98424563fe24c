package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import rillwright.cli.file.Show;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.PondNeeds;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Line;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;

/**
 * Ponds that starve a pump or run over: more water at rest, a larger pond, a lower sill, a wider
 * mouth, a higher overflow, each by as little as helps.
 */
public final class Ponds implements Source {
  private static final int MOST_STEPS = 30;

  /** A pond grows by this share of itself a step. */
  private static final double GROWTH = 0.1;

  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<List<Candidate>> all = new ArrayList<>();
    for (Basin basin : site.network().points(Basin.class)) {
      List<Need> needs =
          site.needs().stream()
              .filter(need -> need.isOfPond() && isOf(basin, need.point(), site))
              .toList();
      add(all, site, needs, starving(site, basin));
      add(all, site, needs, overflowing(site, basin));
    }
    return all;
  }

  /** Changes against one kind of need, each by the least that meets it, and then all needs. */
  private record Against(Predicate<String> code, List<IntFunction<Step>> changes) {}

  private static void add(List<List<Candidate>> all, Site site, List<Need> needs, Against against) {
    List<Need> own = needs.stream().filter(need -> against.code.test(need.code())).toList();
    if (own.isEmpty()) {
      return;
    }
    for (IntFunction<Step> change : against.changes) {
      LeastSteps.find(1, MOST_STEPS, steps -> meets(site, change.apply(steps), own))
          .ifPresent(steps -> all.add(List.of(Candidate.of(change.apply(steps)))));
    }
  }

  /** Whether a need is the basin's own or of a chamber that it feeds. */
  private static boolean isOf(Basin basin, PointName point, Site site) {
    return basin.name().equals(point)
        || site.network().lines().stream()
            .anyMatch(line -> line.from().equals(basin.name()) && line.to().equals(point));
  }

  private static boolean meets(Site site, Step step, List<Need> needs) {
    Optional<List<Need>> after =
        site.changed(step.set()).flatMap(changed -> site.ponds().orElseThrow().in(changed));
    return after.isPresent()
        && needs.stream()
            .noneMatch(
                need ->
                    after.get().stream()
                        .anyMatch(
                            it -> it.at().equals(need.at()) && it.code().equals(need.code())));
  }

  private static Against starving(Site site, Basin basin) {
    Unit unit = unit(site);
    double step = step(unit);
    List<IntFunction<Step>> changes = new ArrayList<>();
    changes.add(steps -> point(Action.FULLER, basin, "level", basin.levelM(), steps * step, unit));
    for (Line line : site.network().lines()) {
      for (Placed<Skimmer> placed : line.placed(Skimmer.class)) {
        if (line.from().equals(basin.name())) {
          double sill = placed.part().sillM();
          double width = placed.part().widthM();
          changes.add(
              steps -> skimmer(Action.LOWER_SILL, placed, "sill", sill, -steps * step, unit));
          changes.add(
              steps -> skimmer(Action.WIDER_MOUTH, placed, "width", width, 2 * steps * step, unit));
          changes.add(steps -> SecondLines.skimmer(line));
        }
      }
    }
    basin
        .shape()
        .ifPresent(
            shape -> changes.add(steps -> PondSize.larger(site, basin, shape, 1 + GROWTH * steps)));
    return new Against(PondNeeds::isOfStarving, changes);
  }

  private static Against overflowing(Site site, Basin basin) {
    Unit unit = unit(site);
    List<IntFunction<Step>> changes = new ArrayList<>();
    if (basin.overflowM().isPresent()) {
      double now = basin.overflowM().getAsDouble();
      changes.add(
          steps -> point(Action.HIGHER_OVERFLOW, basin, "overflow", now, steps * step(unit), unit));
    }
    basin
        .shape()
        .ifPresent(
            shape -> changes.add(steps -> PondSize.larger(site, basin, shape, 1 + GROWTH * steps)));
    return new Against(PondNeeds::isOfOverflow, changes);
  }

  private static Unit unit(Site site) {
    return site.project().show() == Show.METRIC ? Unit.MILLIMETRE : Unit.INCH;
  }

  private static double step(Unit unit) {
    return unit == Unit.INCH ? 0.5 : 10;
  }

  private static Step point(
      Action action, Basin basin, String field, double nowM, double more, Unit unit) {
    double size = rounded(unit.fromSi(nowM) + more);
    return new Step(
        action,
        basin.name().value(),
        "",
        unit.toSi(size),
        "",
        List.of(Addresses.ofPoint(basin.name(), field, written(size, unit))),
        action == Action.FULLER ? Step.NOTHING : OptionalDouble.empty());
  }

  private static Step skimmer(
      Action action, Placed<Skimmer> placed, String field, double nowM, double more, Unit unit) {
    double size = rounded(unit.fromSi(nowM) + more);
    return new Step(
        action,
        placed.line().name().value(),
        "",
        unit.toSi(size),
        "",
        List.of(Addresses.ofPart(placed, field, written(size, unit))),
        OptionalDouble.empty());
  }

  private static double rounded(double value) {
    return Math.rint(2 * value) / 2;
  }

  private static String written(double value, Unit unit) {
    return String.format(Locale.ROOT, "%.1f %s", value, unit.symbol());
  }
}
