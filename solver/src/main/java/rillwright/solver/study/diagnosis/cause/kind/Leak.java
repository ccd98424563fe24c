package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import rillwright.solver.network.Line;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Run;
import rillwright.solver.network.Tee;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Hole;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.job.PartPlace;

/**
 * Water that leaves a pipe where it should not: a hole whose size is what it takes at the head that
 * there is as built. It runs out at the tee's elevation, else at the highest open water.
 */
final class Leak {
  private static final Quantity DRAW =
      Quantity.ratio("what it takes as built, as a share of the pump's flow as built");

  private Leak() {}

  /** The hole at a place with a head as built; empty where nothing would run out. */
  private static Optional<Effect> through(
      AsBuilt job,
      OptionalDouble headM,
      OptionalDouble ownElevationM,
      double pumpFlowM3PerS,
      boolean lost,
      String at,
      BiConsumer<Alteration, Hole> made) {
    if (headM.isEmpty()) {
      return Optional.empty();
    }
    double head = headM.getAsDouble();
    double elevationM = ownElevationM.orElse(job.openWaterBelowM(head));
    double above = head - elevationM;
    return above > 0 && pumpFlowM3PerS > 0
        ? Optional.of(
            (size, altered) -> {
              if (lost) {
                altered.show(Look.GROUND, at, size);
              }
              made.accept(altered, new Hole(elevationM, above, size * pumpFlowM3PerS, lost));
            })
        : Optional.empty();
  }

  /** At a tee or in the middle of a line's longest run. */
  record Buried() implements CauseKind {
    @Override
    public String name() {
      return "leak";
    }

    @Override
    public Quantity quantity() {
      return DRAW;
    }

    @Override
    public Optional<SizeRange> sizes() {
      return Optional.of(SizeRange.even(0.02, 0.8));
    }

    @Override
    public double weight() {
      return 0.03;
    }

    @Override
    public List<Site> sitesIn(AsBuilt job) {
      List<Site> sites = new ArrayList<>();
      for (Tee tee : job.network().points(Tee.class)) {
        through(
                job,
                job.state().point(tee.name()).headM(),
                tee.elevationM(),
                job.pumpFlowM3PerS(tee.name()),
                true,
                tee.name().value(),
                (altered, hole) -> altered.holeAt(tee.name(), hole))
            .ifPresent(
                effect -> sites.add(new Site(CauseId.at(name(), tee.name().value()), effect)));
      }
      for (Line line : Places.withRun(job.network())) {
        PartPlace run = longestRun(line);
        through(
                job,
                middle(job, run),
                OptionalDouble.empty(),
                job.pumpFlowM3PerS(line.name()),
                true,
                line.name().value(),
                (altered, hole) -> altered.holeInTheMiddleOf(run, hole))
            .ifPresent(
                effect -> sites.add(new Site(CauseId.at(name(), line.name().value()), effect)));
      }
      return sites;
    }

    private static OptionalDouble middle(AsBuilt job, PartPlace run) {
      OptionalDouble before = job.headBeforeM(run);
      OptionalDouble after = job.headAfterM(run);
      return before.isPresent() && after.isPresent()
          ? OptionalDouble.of((before.getAsDouble() + after.getAsDouble()) / 2)
          : OptionalDouble.empty();
    }

    private static PartPlace longestRun(Line line) {
      int longest = -1;
      double length = 0;
      for (Placed<Run> run : line.placed(Run.class)) {
        if (run.part().lengthM() > length) {
          longest = run.index();
          length = run.part().lengthM();
        }
      }
      return new PartPlace(line.name(), longest);
    }
  }

  /** A branch left open just after a pump; most of them run back to the pond. */
  record Bypass() implements CauseKind {
    @Override
    public String name() {
      return "bypass open";
    }

    @Override
    public Quantity quantity() {
      return DRAW;
    }

    @Override
    public Optional<SizeRange> sizes() {
      return Optional.of(SizeRange.even(0.05, 0.7));
    }

    @Override
    public double weight() {
      return 0.02;
    }

    @Override
    public List<Site> sitesIn(AsBuilt job) {
      List<Site> sites = new ArrayList<>();
      for (Line line : job.network().lines()) {
        Places.firstIndex(line, Places::isRunningPump)
            .ifPresent(index -> site(job, new PartPlace(line.name(), index)).ifPresent(sites::add));
      }
      return sites;
    }

    private Optional<Site> site(AsBuilt job, PartPlace pump) {
      return through(
              job,
              job.headAfterM(pump),
              OptionalDouble.empty(),
              job.pumpFlowM3PerS(pump.line()),
              false,
              pump.line().value(),
              (altered, hole) -> altered.holeAfter(pump, hole))
          .map(effect -> new Site(CauseId.at(name(), pump.line().value()), effect));
    }
  }
}
