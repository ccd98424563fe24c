package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
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
import rillwright.solver.stream.Freeboard;

/**
 * Ponds that starve a pump or run over: more water at rest, a larger pond, a lower sill, a wider
 * mouth, a higher overflow, each by as little as helps, and as far as {@link Freeboard} is kept.
 */
public final class Ponds implements Source {
  private static final int MOST_STEPS = 30;

  /** A pond grows by this share of itself a step. */
  private static final double GROWTH = 0.1;

  /** A pond is made twice as large at most: beyond, it is another pond. */
  private static final int MOST_GROWN = 10;

  private static final double LEVEL = 1e-6;

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
  private record Against(Predicate<String> code, List<Stepwise> changes) {}

  /** A change by steps, and how many there may be. */
  private record Stepwise(int most, IntFunction<Candidate> change) {
    static Stepwise of(int most, IntFunction<Step> change) {
      return new Stepwise(most, steps -> Candidate.of(change.apply(steps)));
    }
  }

  private static void add(List<List<Candidate>> all, Site site, List<Need> needs, Against against) {
    List<Need> own = needs.stream().filter(need -> against.code.test(need.code())).toList();
    if (own.isEmpty()) {
      return;
    }
    for (Stepwise by : against.changes) {
      LeastSteps.find(1, by.most, steps -> meets(site, by.change.apply(steps), own))
          .ifPresent(steps -> all.add(List.of(by.change.apply(steps))));
    }
  }

  /** Whether a need is the basin's own or of a chamber that it feeds. */
  private static boolean isOf(Basin basin, PointName point, Site site) {
    return basin.name().equals(point)
        || site.network().lines().stream()
            .anyMatch(line -> line.from().equals(basin.name()) && line.to().equals(point));
  }

  private static boolean meets(Site site, Candidate change, List<Need> needs) {
    return site.changed(change.set())
        .flatMap(site::waterIn)
        .filter(water -> water.meets(needs))
        .isPresent();
  }

  private static Against starving(Site site, Basin basin) {
    Unit unit = unit(site);
    double step = step(unit);
    List<Stepwise> changes = new ArrayList<>();
    changes.add(
        Stepwise.of(
            steps(basin.levelM(), Freeboard.highestRestM(basin, site.network()), unit),
            steps -> point(Action.FULLER, basin, "level", basin.levelM(), steps * step, unit)));
    for (Line line : site.network().lines()) {
      for (Placed<Skimmer> placed : line.placed(Skimmer.class)) {
        if (line.from().equals(basin.name())) {
          changes.add(
              Stepwise.of(MOST_STEPS, steps -> Skimmers.lowerSill(placed, steps * step, unit)));
          changes.add(
              Stepwise.of(
                  MOST_STEPS, steps -> Skimmers.widerMouth(placed, 2 * steps * step, unit)));
          changes.add(Stepwise.of(1, steps -> SecondLines.skimmer(line)));
        }
      }
    }
    if (basin.leastLevelM().isPresent() && basin.shape().isPresent()) {
      double least = basin.leastLevelM().getAsDouble();
      changes.add(
          Stepwise.of(
              steps(basin.shape().get().floorM(), least, unit),
              steps ->
                  point(Action.DEEPER_INTAKE, basin, "least level", least, -steps * step, unit)));
    }
    changes.addAll(larger(site, basin));
    return new Against(PondNeeds::isOfStarving, changes);
  }

  private static Against overflowing(Site site, Basin basin) {
    Unit unit = unit(site);
    List<Stepwise> changes = new ArrayList<>();
    int higher =
        basin.overflowM().isPresent()
            ? steps(basin.overflowM().getAsDouble(), Freeboard.highestOverflowM(basin), unit)
            : 0;
    changes.add(Stepwise.of(higher, steps -> overflow(site, basin, steps * step(unit), unit)));
    if (higher > 0) {
      Candidate highest = Candidate.of(overflow(site, basin, higher * step(unit), unit));
      larger(site, basin)
          .forEach(
              larger ->
                  changes.add(
                      new Stepwise(larger.most, steps -> highest.and(larger.change.apply(steps)))));
    }
    changes.addAll(larger(site, basin));
    return new Against(PondNeeds::isOfOverflow, changes);
  }

  private static List<Stepwise> larger(Site site, Basin basin) {
    return basin.shape().stream()
        .map(
            shape ->
                Stepwise.of(
                    MOST_GROWN, steps -> PondSize.larger(site, basin, shape, 1 + GROWTH * steps)))
        .toList();
  }

  /** How many steps there are from a level up to another. */
  private static int steps(double fromM, double toM, Unit unit) {
    double room = unit.fromSi(toM) - unit.fromSi(fromM);
    return (int) Math.min(MOST_STEPS, Math.floor(room / step(unit) + LEVEL));
  }

  /** Higher, and with it the top of each skimmer's mouth that is as high now. */
  private static Step overflow(Site site, Basin basin, double more, Unit unit) {
    double now = basin.overflowM().orElseThrow();
    Step higher = point(Action.HIGHER_OVERFLOW, basin, "overflow", now, more, unit);
    List<String> set = new ArrayList<>(higher.set());
    for (Line line : site.network().lines()) {
      for (Placed<Skimmer> placed : line.placed(Skimmer.class)) {
        double top = placed.part().mouthTopM().orElse(Double.NEGATIVE_INFINITY);
        if (line.from().equals(basin.name()) && top > now - LEVEL && top < higher.figure()) {
          set.add(
              Addresses.ofPart(
                  placed,
                  "height",
                  Addresses.size(unit.fromSi(higher.figure() - placed.part().sillM()), unit)));
        }
      }
    }
    return new Step(
        higher.action(), higher.at(), "", higher.figure(), "", set, OptionalDouble.empty());
  }

  private static Unit unit(Site site) {
    return site.project().show() == Show.METRIC ? Unit.MILLIMETRE : Unit.INCH;
  }

  private static double step(Unit unit) {
    return unit == Unit.INCH ? 0.5 : 10;
  }

  private static Step point(
      Action action, Basin basin, String field, double nowM, double more, Unit unit) {
    double size = unit.fromSi(nowM) + more;
    return new Step(
        action,
        basin.name().value(),
        "",
        unit.toSi(size),
        "",
        List.of(Addresses.ofPoint(basin.name(), field, Addresses.size(size, unit))),
        action == Action.FULLER ? Step.NOTHING : OptionalDouble.empty());
  }
}
