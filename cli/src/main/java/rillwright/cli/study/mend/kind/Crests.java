package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rillwright.cli.file.Show;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/**
 * The crest of a fall: lower for more flow, higher for less; of another width where the target is a
 * depth or a flow for each unit of width.
 */
public final class Crests implements Source {
  private static final int MOST_LOWER = 40;

  private static final int MOST_HIGHER = 240;

  private static final int MOST_NARROWER = 60;

  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<List<Candidate>> all = new ArrayList<>();
    for (Need need : site.needs()) {
      if (need.isOfTarget() && site.network().point(need.point()) instanceof Fall fall) {
        if (need.isUnder()) {
          lower(site, fall).ifPresent(step -> all.add(List.of(Candidate.of(step))));
        } else {
          raise(site, fall).ifPresent(step -> all.add(List.of(Candidate.of(step))));
        }
        if (isByWidth(site, fall)) {
          width(site, fall, need.isUnder()).ifPresent(step -> all.add(List.of(Candidate.of(step))));
        }
      }
    }
    return all;
  }

  private static Unit unit(Site site) {
    return site.project().show() == Show.METRIC ? Unit.MILLIMETRE : Unit.INCH;
  }

  private static double step(Unit unit) {
    return unit == Unit.INCH ? 0.5 : 10;
  }

  /** Whether it gets its target in a state, and at the levels that run then. */
  private static boolean gets(Site site, Fall fall, Optional<SteadyState> state) {
    return state
        .filter(it -> !it.starves() && gets(fall, it))
        .filter(it -> site.doesRunning(it.network(), runs -> gets(fall, runs)))
        .isPresent();
  }

  private static boolean gets(Fall fall, SteadyState state) {
    PointState now = state.point(fall.name());
    return now.outflowM3PerS() >= now.point().targetM3PerS().orElse(Double.POSITIVE_INFINITY);
  }

  private static Optional<Step> lower(Site site, Fall fall) {
    Unit unit = unit(site);
    double water =
        site.network().points(Basin.class).stream()
            .mapToDouble(Basin::levelM)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    double drop = (unit.fromSi(fall.crestM()) - unit.fromSi(water)) / step(unit) - 1;
    OptionalInt least =
        LeastSteps.find(
            1,
            (int) Math.min(MOST_LOWER, drop),
            steps -> gets(site, fall, moved(site, fall, -steps, unit)));
    return crest(fall, least, -1, unit);
  }

  /** The highest that still gets its target. */
  private static Optional<Step> raise(Site site, Fall fall) {
    Unit unit = unit(site);
    OptionalInt last =
        LeastSteps.last(1, MOST_HIGHER, steps -> gets(site, fall, moved(site, fall, steps, unit)));
    return crest(fall, last, 1, unit);
  }

  private static Optional<SteadyState> moved(Site site, Fall fall, int steps, Unit unit) {
    double crestM = unit.toSi(unit.fromSi(fall.crestM()) + steps * step(unit));
    return Site.balanced(site.network().withPoint(fall.withCrest(crestM, fall.weir())));
  }

  private static Optional<Step> crest(Fall fall, OptionalInt steps, int way, Unit unit) {
    double now = unit.fromSi(fall.crestM());
    return steps.isEmpty()
        ? Optional.empty()
        : Optional.of(
            changed(
                Action.OTHER_CREST,
                "crest",
                fall,
                now + way * steps.getAsInt() * step(unit),
                unit));
  }

  /** By trying the file itself: the target goes with the width. */
  private static Optional<Step> width(Site site, Fall fall, boolean narrower) {
    Unit unit = unit(site);
    double now = unit.fromSi(fall.widthM().orElse(0));
    int most = (int) Math.min(MOST_NARROWER, Math.ceil(now / step(unit) / 2));
    if (now == 0) {
      return Optional.empty();
    }
    OptionalInt least =
        narrower
            ? LeastSteps.find(
                1,
                most,
                steps -> gets(site, fall, sized(site, fall, now - steps * step(unit), unit)))
            : LeastSteps.last(
                1,
                2 * MOST_NARROWER,
                steps -> gets(site, fall, sized(site, fall, now + steps * step(unit), unit)));
    return least.isEmpty()
        ? Optional.empty()
        : Optional.of(
            changed(
                Action.OTHER_WIDTH,
                "width",
                fall,
                now + (narrower ? -1 : 1) * least.getAsInt() * step(unit),
                unit));
  }

  private static Optional<SteadyState> sized(Site site, Fall fall, double width, Unit unit) {
    return site.with(changed(Action.OTHER_WIDTH, "width", fall, width, unit).set());
  }

  private static Step changed(Action action, String field, Fall fall, double size, Unit unit) {
    return new Step(
        action,
        fall.name().value(),
        "",
        unit.toSi(size),
        "",
        List.of(Addresses.ofPoint(fall.name(), field, Addresses.size(size, unit))),
        OptionalDouble.empty());
  }

  /** Whether the target is a depth or a flow for each unit of width. */
  private static boolean isByWidth(Site site, Fall fall) {
    return site.project()
        .tree()
        .findMap("points")
        .flatMap(points -> points.findMap(fall.name().value()))
        .flatMap(point -> point.findNode("target"))
        .filter(
            target ->
                target instanceof MapNode
                    || (target instanceof Scalar text
                        && QuantityReader.fits(text.text(), Measure.FLOW_PER_WIDTH)))
        .isPresent();
  }
}
