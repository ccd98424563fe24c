package rillwright.solver.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.curve.FallingRoot;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.HeadNeeded;
import rillwright.solver.pumping.TargetHead.Governed;
import rillwright.solver.pumping.Targets;
import rillwright.solver.steady.Course;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.trial.Verdict.Kind;

/** Finds the {@link Verdict} on a pump in a network. */
final class Judge {
  /** Share of a head by which rounding may make it look too small. */
  private static final double ROUNDING = 1e-9;

  /** How often the way to a share is halved where all pumps ask for the same halves. */
  private static final int HALVES = 4;

  private final Demand demand;
  private final double densityKgPerM3;

  Judge(Demand demand, double densityKgPerM3) {
    this.demand = demand;
    this.densityKgPerM3 = densityKgPerM3;
  }

  /**
   * The verdict.
   *
   * @param flowM3PerS through the pump with the valves as they stand, m³/s
   */
  Verdict judge(PumpSet set, double flowM3PerS, SteadyState state) {
    Targets targets = demand.targets();
    PointName worst = targets.worstIn(state);
    double least = targets.shareAt(worst, state);
    boolean starves = state.starves();
    boolean notNeeded = demand.asksNothingThrottled();
    boolean asItStands =
        targets.greatestShareIn(state) <= Verdict.TOO_MUCH_SHARE
            && !starves
            && !(notNeeded && targets.isNextToNothing(flowM3PerS));
    Kind kind;
    if (asItStands && least >= Verdict.ENOUGH_SHARE) {
      kind = Kind.MEETS_TARGET;
    } else if (asItStands && least >= Verdict.JUST_SHORT_SHARE) {
      kind = Kind.JUST_SHORT;
    } else if (notNeeded) {
      kind = Kind.NOT_NEEDED;
    } else if (!demand.isStartedBy(set)) {
      kind = Kind.CANNOT_START;
    } else if (reaches(set, demand.throttled())) {
      kind = Kind.THROTTLED;
    } else if (reaches(set, demand.throttledJustShort())) {
      kind = Kind.THROTTLED_JUST_SHORT;
    } else if (getsNothing(least) && doesNotStart(state)) {
      kind = Kind.CANNOT_START;
    } else {
      kind = cannotLift(set, worst, least) ? Kind.CANNOT_LIFT : Kind.FALLS_SHORT;
    }
    OptionalDouble share = throttledShare(kind, set);
    Optional<HeadNeeded> throttled = throttled(share);
    return new Verdict(
        kind,
        worst,
        least,
        starves,
        throttled.map(at -> RunningPoint.of(set, at.flowM3PerS(), densityKgPerM3)),
        share,
        throttled.map(HeadNeeded::state),
        throttled.isPresent() ? MissingValves.in(state, targets) : List.of(),
        kind == Kind.FALLS_SHORT && least < 1
            ? attainableShare(set, least)
            : OptionalDouble.empty(),
        kind == Kind.NOT_NEEDED ? OptionalDouble.empty() : missingHead(set));
  }

  /** A pump that would stand dead does not count as one that reaches. */
  private boolean reaches(PumpSet set, Optional<Governed> governed) {
    return governed.isPresent()
        && !demand.targets().isNextToNothing(governed.get().needed().flowM3PerS())
        && lackM(set, governed.get().needed()) <= 0;
  }

  private static double lackM(PumpSet set, HeadNeeded needed) {
    double room = ROUNDING * Math.abs(needed.headM());
    return needed.headM() - room - set.headAt(needed.flowM3PerS());
  }

  private static boolean getsNothing(double share) {
    return share <= 1 - Verdict.ENOUGH_SHARE;
  }

  private static boolean doesNotStart(SteadyState state) {
    return state.lines().stream().anyMatch(line -> line.course() instanceof Course.NotStarted);
  }

  private boolean cannotLift(PumpSet set, PointName worst, double least) {
    OptionalDouble lift = demand.liftM(worst);
    return getsNothing(least)
        && lift.isPresent()
        && set.headAt(0) <= lift.getAsDouble() + ROUNDING * Math.abs(lift.getAsDouble());
  }

  /** The greatest share of its target that every fall can get from it, where it is throttled. */
  private OptionalDouble throttledShare(Kind kind, PumpSet set) {
    return switch (kind) {
      case THROTTLED -> OptionalDouble.of(1);
      case THROTTLED_JUST_SHORT ->
          OptionalDouble.of(
              FallingRoot.find(
                  share -> spareM(set, demand.about(share)),
                  Verdict.JUST_SHORT_SHARE,
                  1,
                  Demand.SHARE_ACCURACY));
      default -> OptionalDouble.empty();
    };
  }

  /**
   * The greatest share of its target that every fall can get from one that falls short.
   *
   * @param least the share that the one that gets the least has with the valves as they stand
   */
  private OptionalDouble attainableShare(PumpSet set, double least) {
    if (demand.targets().falls().size() == 1) {
      return OptionalDouble.of(least);
    }
    double from = Demand.SHARE_ACCURACY;
    double to = demand.greatestShare();
    Optional<Governed> near = Optional.empty();
    for (int half = 0; half < HALVES; half++) {
      double middle = (from + to) / 2;
      Optional<Governed> asked = demand.aboutHalf(middle);
      near = asked.isPresent() ? asked : near;
      if (spareM(set, asked) >= 0) {
        from = middle;
      } else {
        to = middle;
      }
    }
    Optional<PointName> likely = near.map(Governed::governing);
    double share =
        from < to
            ? FallingRoot.find(
                it -> spareM(set, demand.about(it, likely)), from, to, Demand.SHARE_ACCURACY)
            : from;
    return OptionalDouble.of(Math.max(least, share));
  }

  /** The head that it has to spare where every fall gets a share of its target, m. */
  private static double spareM(PumpSet set, Optional<Governed> asked) {
    return asked.map(at -> -lackM(set, at.needed())).orElse(-1.0);
  }

  private Optional<HeadNeeded> throttled(OptionalDouble share) {
    if (share.isEmpty()) {
      return Optional.empty();
    }
    return (share.getAsDouble() == 1 ? demand.throttled() : demand.throttledTo(share.getAsDouble()))
        .map(Governed::needed);
  }

  private OptionalDouble missingHead(PumpSet set) {
    if (demand.throttled().isEmpty()) {
      return OptionalDouble.empty();
    }
    double lack =
        Math.max(lackM(set, demand.throttled().get().needed()), demand.startingLackM(set));
    return lack > 0 ? OptionalDouble.of(lack) : OptionalDouble.empty();
  }
}
