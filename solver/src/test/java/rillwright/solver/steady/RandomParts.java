package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.law.curve.MonotoneCubic.Knot;
import rillwright.solver.law.filter.TwoTermLoss;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.TabulatedLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;

/** Seeded random parts: every kind, from common sizes to silly ones. */
final class RandomParts {
  private final Dice dice;
  private int gauges;

  RandomParts(Dice dice) {
    this.dice = dice;
  }

  /** A skimmer's mouth, perhaps with a net downstream of it. */
  List<Part> skimmer() {
    List<Part> parts = new ArrayList<>();
    double clogged = dice.chance(0.3) ? 0.4 : dice.chance(0.05) ? 1 : 0;
    double sill = dice.chance(0.05) ? dice.uniform(-0.31, 0.31) : dice.uniform(-0.35, -0.3);
    parts.add(
        new Skimmer(
            dice.uniform(0.1, 0.4), OptionalDouble.empty(), sill, Skimmer.WITH_DOOR, clogged));
    if (dice.chance(0.5)) {
      parts.add(
          new Filter(
              new PowerLoss(dice.uniform(0.005, 0.05), 3e-3, dice.uniform(1, 2)),
              dice.chance(0.1) ? 0.97 : 0.2,
              OptionalDouble.empty(),
              0));
    }
    return parts;
  }

  /** A pipe with what hangs on it; a pump anywhere in it by chance. */
  List<Part> pipe(double chanceOfPump) {
    Bore bore = new Bore(bore());
    List<Part> parts = new ArrayList<>();
    if (!dice.chance(0.05)) {
      double length = dice.chance(0.05) ? dice.uniform(100, 2000) : dice.uniform(0.5, 40);
      parts.add(new Run(length, bore, friction(), "pipe"));
    }
    parts.add(new Fitting("elbow", 1 + dice.below(4), dice.uniform(0.2, 1), bore));
    if (dice.chance(0.25)) {
      double cracking = dice.chance(0.5) ? 0 : dice.uniform(0, 0.3);
      parts.add(new CheckValve("check", cracking, dice.uniform(0.5, 3), bore));
    }
    if (dice.chance(0.3)) {
      parts.add(new Valve("valve", setpoint(), bore, true));
    }
    if (dice.chance(0.1)) {
      parts.add(filter());
    }
    if (dice.chance(0.15)) {
      parts.add(loss(bore));
    }
    if (dice.chance(0.1)) {
      parts.add(new Gauge("gauge " + gauges++, 0, Optional.of(bore)));
    }
    if (dice.chance(0.05)) {
      parts.add(new HighPoint(dice.uniform(0, 3), Optional.of(bore)));
    }
    if (dice.chance(0.2)) {
      Bore other = bore.times(dice.uniform(0.5, 2));
      parts.add(new Run(dice.uniform(0.5, 40), other, friction(), "pipe"));
    }
    while (dice.chance(chanceOfPump)) {
      int place = dice.chance(0.5) ? 0 : dice.below(parts.size() + 1);
      parts.add(place, pump());
      chanceOfPump /= 4;
    }
    return parts;
  }

  private double bore() {
    double kind = dice.uniform(0, 1);
    if (kind < 0.12) {
      return dice.uniform(0.006, 0.012);
    }
    if (kind < 0.15) {
      return dice.uniform(0.002, 0.006);
    }
    return kind < 0.18 ? dice.uniform(0.2, 1) : dice.uniform(0.02, 0.1);
  }

  private Friction friction() {
    return switch (dice.below(8)) {
      case 0 -> new Friction.HazenC(dice.uniform(120, 150));
      case 1 -> new Friction.DarcyFactor(dice.uniform(0.015, 0.03));
      case 2 -> new Friction.Roughness(0);
      default -> new Friction.Roughness(dice.uniform(0, 1e-4));
    };
  }

  private Valve.Setpoint setpoint() {
    if (dice.chance(0.2)) {
      return new Valve.GivenLoss(dice.chance(0.2) ? 0 : dice.uniform(0, 600));
    }
    double open = dice.chance(0.2) ? 0 : dice.chance(0.1) ? 0.005 : dice.uniform(0.1, 1);
    ValveTravel[] kinds = ValveTravel.values();
    return new Valve.Opening(kinds[dice.below(kinds.length)], open);
  }

  private Filter filter() {
    TwoTermLoss clean = new TwoTermLoss(dice.uniform(0, 200), dice.uniform(1e3, 1e5));
    double clogged = dice.chance(0.1) ? 1 : dice.uniform(0, 0.95);
    OptionalDouble openTop =
        dice.chance(0.3) ? OptionalDouble.of(dice.uniform(0.05, 0.4)) : OptionalDouble.empty();
    return new Filter(clean, clogged, openTop, 0);
  }

  private Loss loss(Bore bore) {
    return switch (dice.below(3)) {
      case 0 -> new Loss(new VelocityHeadLoss(dice.uniform(0, 20), bore), Optional.of(bore));
      case 1 ->
          new Loss(
              new PowerLoss(dice.uniform(0.1, 3), dice.uniform(5e-4, 5e-3), dice.uniform(1, 3)),
              Optional.empty());
      default -> new Loss(tabulated(), Optional.empty());
    };
  }

  private TabulatedLoss tabulated() {
    List<Knot> knots = new ArrayList<>(List.of(new Knot(0, 0)));
    double head = 0;
    int rows = 1 + dice.below(5);
    for (int i = 1; i <= rows; i++) {
      head += dice.chance(0.2) ? 1e-4 : dice.uniform(0.01, 0.5);
      knots.add(new Knot(i * 1e-3, head));
    }
    return TabulatedLoss.through(knots);
  }

  /** A pump of a few metres; at times stopped, throttled, doubled, or letting water back. */
  Pump pump() {
    double head = dice.level(0.5, 10);
    double flow = dice.uniform(5e-4, 8e-3);
    List<PumpPoint> sheet = new ArrayList<>();
    int rows = 2 + dice.below(5);
    double first = dice.chance(0.1) ? 0.1 : 0;
    for (int i = 0; i < rows; i++) {
      double x = (first + i) / (first + rows - 1);
      double wobble = i > 0 && i < rows - 1 ? dice.uniform(-0.03, 0.03) * head : 0;
      double h = Math.max(0, head * (1 - Math.pow(x, 1.8)) + wobble);
      sheet.add(new PumpPoint(x * flow, h, OptionalDouble.of(50 + 300 * x)));
    }
    Optional<VelocityHeadLoss> runsBack =
        dice.chance(0.15)
            ? Optional.of(new VelocityHeadLoss(15, new Bore(0.04)))
            : Optional.empty();
    double speed = dice.chance(0.1) ? 0 : dice.chance(0.3) ? dice.uniform(0.2, 1.2) : 1;
    PumpSet.Arrangement arrangement =
        dice.chance(0.5) ? PumpSet.Arrangement.PARALLEL : PumpSet.Arrangement.SERIES;
    return new Pump(
        "random",
        new PumpSet(new PumpCurve(sheet), speed, 1 + dice.below(3), arrangement, runsBack));
  }
}
