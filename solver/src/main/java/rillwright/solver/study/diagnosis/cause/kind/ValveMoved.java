package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Valve;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** A valve that somebody turned, or that was never set: further open or further shut. */
final class ValveMoved {
  private static final String NAME = "valve not where the file says";
  private static final double WEIGHT = 0.05;

  /** A handle that is moved at all is moved by 3° of its 90°. */
  private static final double LEAST_MOVE = 3.0 / 90;

  /** Those that are there to be set are turned more often. */
  private static final double ADJUSTABLE_CHANCES = 2;

  private ValveMoved() {}

  private static Site site(Placed<Valve> valve, Effect effect) {
    return new Site(
        CauseId.at(NAME, PartPlace.of(valve)),
        effect,
        valve.part().adjustable() ? ADJUSTABLE_CHANCES : 1);
  }

  /** One whose loss by opening is known. */
  record Turned() implements CauseKind {
    @Override
    public String name() {
      return NAME;
    }

    @Override
    public Quantity quantity() {
      return new Quantity("how far it is open, as a share of its travel", "1", 1e-3, 1);
    }

    @Override
    public Optional<SizeRange> sizes() {
      return Optional.of(SizeRange.even(0.05, 1));
    }

    @Override
    public double weight() {
      return WEIGHT;
    }

    @Override
    public List<Site> sitesIn(AsBuilt job) {
      List<Site> sites = new ArrayList<>();
      for (Placed<Valve> valve : job.network().placed(Valve.class)) {
        if (valve.part().loss() instanceof Valve.Opening filed) {
          sites.add(site(valve, new Turn(PartPlace.of(valve), filed)));
        }
      }
      return sites;
    }
  }

  private record Turn(PartPlace place, Valve.Opening filed) implements Effect {
    @Override
    public void apply(double open, Alteration job) {
      job.changePart(place, Valve.class, valve -> valve.withSetpoint(filed.at(open)));
    }

    @Override
    public boolean isThereAt(double open) {
      return Math.abs(open - filed.open()) >= LEAST_MOVE;
    }
  }

  /** One of which the file gives a loss coefficient only. */
  record Throttled() implements CauseKind {
    @Override
    public String name() {
      return NAME;
    }

    @Override
    public Quantity quantity() {
      return Quantity.ratio("loss coefficient K added in it");
    }

    @Override
    public Optional<SizeRange> sizes() {
      return Optional.of(SizeRange.log(1, AddedLoss.GREATEST));
    }

    @Override
    public double weight() {
      return WEIGHT;
    }

    @Override
    public List<Site> sitesIn(AsBuilt job) {
      List<Site> sites = new ArrayList<>();
      for (Placed<Valve> valve : job.network().placed(Valve.class)) {
        if (valve.part().loss() instanceof Valve.GivenLoss && !valve.part().isShut()) {
          PartPlace place = PartPlace.of(valve);
          sites.add(
              site(
                  valve,
                  (k, altered) ->
                      altered.addAfter(
                          place,
                          new Loss(
                              new VelocityHeadLoss(k, valve.part().inside()),
                              Optional.of(valve.part().inside())))));
        }
      }
      return sites;
    }
  }
}
