package rillwright.cli.study.mend.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import rillwright.cli.file.Show;
import rillwright.cli.file.change.AddressBook;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.PondNeeds;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
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
        }
      }
    }
    basin.shape().ifPresent(shape -> changes.add(steps -> larger(site, basin, shape, steps)));
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
    basin.shape().ifPresent(shape -> changes.add(steps -> larger(site, basin, shape, steps)));
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

  /** Every area that the file writes for it grows alike. */
  private static Step larger(Site site, Basin basin, BasinShape shape, int steps) {
    Unit unit = site.project().show() == Show.METRIC ? Unit.SQUARE_METRE : Unit.SQUARE_FOOT;
    double factor = 1 + GROWTH * steps;
    Map<String, String> written = new AddressBook(site.project().tree()).textByAddress();
    List<String> set = new ArrayList<>();
    for (int row = 0; row < shape.rows().size(); row++) {
      String area = written(tenths(unit.fromSi(factor * shape.rows().get(row).areaM2())), unit);
      String change =
          shape.rows().size() == 1
              ? Addresses.ofPoint(basin.name(), "area", area)
              : Addresses.ofShape(basin.name(), row + 1, area);
      if (written.containsKey(change.substring(0, change.lastIndexOf('=')))) {
        set.add(change);
      }
    }
    return new Step(
        Action.LARGER_POND, basin.name().value(), "", factor, "", set, OptionalDouble.empty());
  }

  private static double rounded(double value) {
    return Math.rint(2 * value) / 2;
  }

  private static double tenths(double value) {
    return Math.rint(10 * value) / 10;
  }

  private static String written(double value, Unit unit) {
    return String.format(Locale.ROOT, "%.1f %s", value, unit.symbol());
  }
}
