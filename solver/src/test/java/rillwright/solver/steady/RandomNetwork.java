package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import rillwright.solver.law.Bore;
import rillwright.solver.law.filter.TwoTermLoss;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.law.weir.ThinPlateWeir;
import rillwright.solver.law.weir.VNotchWeir;
import rillwright.solver.law.weir.Weir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Nozzle;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.network.Valve;
import rillwright.solver.water.Water;

/**
 * Seeded random networks of all that the trade builds and a good deal that it does not: trees and
 * loops, several pumps, falls at different heights, check valves the wrong way round, dead ends,
 * laminar hoses, shut valves, draws, starved chambers.
 */
final class RandomNetwork {
  private final SplittableRandom random;
  private final List<Point> points = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();

  private RandomNetwork(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** A network of {@code seed}; the same for the same seed. */
  static Network of(long seed) {
    return new RandomNetwork(seed).build();
  }

  private Network build() {
    int tees = 1 + random.nextInt(random.nextInt(10) == 0 ? 20 : 5);
    points.add(basin("pond", uniform(-0.3, 0.3)));
    if (chance(0.3)) {
      points.add(basin("reservoir", uniform(-2, 5)));
    }
    if (chance(0.5)) {
      double floor = uniform(-1, -0.4);
      points.add(
          new Chamber(
              new PointName("chamber"),
              floor,
              floor + 0.2,
              OptionalDouble.empty(),
              OptionalDouble.empty()));
      join("pond", "chamber", skimmerParts());
      if (chance(0.3)) {
        join("pond", "chamber", pipeParts());
      }
    }
    String start = points.get(points.size() - 1) instanceof Chamber ? "chamber" : "pond";
    List<String> teeNames = new ArrayList<>();
    for (int i = 0; i < tees; i++) {
      String name = "tee " + i;
      double draw = chance(0.08) ? uniform(-1e-3, 1e-3) : 0;
      points.add(new Tee(new PointName(name), OptionalDouble.of(uniform(-1, 4)), draw));
      String before = teeNames.isEmpty() ? start : teeNames.get(random.nextInt(teeNames.size()));
      List<Part> parts = pipeParts();
      if (teeNames.isEmpty() || chance(0.15)) {
        parts.add(0, pump());
      }
      join(before, name, parts);
      teeNames.add(name);
    }
    int ends = 1 + random.nextInt(4);
    for (int i = 0; i < ends; i++) {
      String name = "end " + i;
      points.add(chance(0.7) ? fall(name) : outlet(name));
      join(teeNames.get(random.nextInt(teeNames.size())), name, pipeParts());
    }
    int extra = random.nextInt(4);
    for (int i = 0; i < extra; i++) {
      String from = points.get(random.nextInt(points.size())).name().value();
      String to = points.get(random.nextInt(points.size())).name().value();
      if (!from.equals(to)) {
        List<Part> parts = pipeParts();
        if (chance(0.2)) {
          parts.add(0, pump());
        }
        join(from, to, parts);
      }
    }
    return new Network(Water.at(uniform(2, 30)), 0, points, lines);
  }

  private static Basin basin(String name, double levelM) {
    return new Basin(
        new PointName(name),
        levelM,
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private Fall fall(String name) {
    double width = uniform(0.1, 1.2);
    Weir weir =
        switch (random.nextInt(5)) {
          case 0 -> PowerWeir.ofDischargeCoefficient(uniform(0.5, 0.7), width);
          case 1 ->
              new ThinPlateWeir(
                  width, uniform(0.05, 0.4), width * (chance(0.5) ? 1 : uniform(1, 3)));
          case 2 -> new VNotchWeir(uniform(40, 100));
          default -> new PowerWeir(1.60, width, BrinkRule.FREE_OVERFALL);
        };
    return new Fall(
        new PointName(name),
        uniform(0.1, 8),
        width,
        weir,
        0.3,
        OptionalDouble.empty(),
        Optional.empty());
  }

  private Outlet outlet(String name) {
    double elevation = uniform(-0.5, 4);
    boolean underWater = chance(0.4);
    Optional<Nozzle> nozzle =
        chance(0.4)
            ? Optional.of(new Nozzle(new Bore(uniform(0.006, 0.03)), 0.95))
            : Optional.empty();
    return new Outlet(
        new PointName(name),
        elevation,
        underWater ? OptionalDouble.of(elevation + 0.2) : OptionalDouble.empty(),
        nozzle,
        OptionalDouble.empty());
  }

  private List<Part> skimmerParts() {
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Skimmer(
            uniform(0.1, 0.4),
            OptionalDouble.empty(),
            uniform(-0.35, -0.3),
            0.36,
            chance(0.3) ? 0.4 : 0));
    if (chance(0.5)) {
      parts.add(
          new Filter(new PowerLoss(uniform(0.005, 0.05), 3e-3, 2), 0.2, OptionalDouble.empty(), 0));
    }
    return parts;
  }

  private List<Part> pipeParts() {
    List<Part> parts = new ArrayList<>();
    boolean hose = chance(0.15);
    Bore bore = new Bore(hose ? uniform(0.006, 0.012) : uniform(0.02, 0.1));
    Friction friction =
        switch (random.nextInt(8)) {
          case 0 -> new Friction.HazenC(uniform(120, 150));
          case 1 -> new Friction.DarcyFactor(uniform(0.015, 0.03));
          default -> new Friction.Roughness(uniform(0, 3e-4));
        };
    if (!chance(0.05)) {
      parts.add(new Run(uniform(0.5, 40), bore, friction, "pipe"));
    }
    parts.add(new Fitting("elbow", 1 + random.nextInt(4), uniform(0.2, 1), bore));
    if (chance(0.25)) {
      parts.add(new CheckValve("check", chance(0.5) ? 0 : uniform(0, 0.3), uniform(0.5, 3), bore));
    }
    if (chance(0.3)) {
      double open = chance(0.2) ? 0 : uniform(0.1, 1);
      parts.add(new Valve("ball", new Valve.Opening(ValveTravel.BALL, open), bore, true));
    }
    if (chance(0.1)) {
      parts.add(
          new Filter(
              new TwoTermLoss(uniform(0, 200), uniform(1e3, 1e5)),
              uniform(0, 0.8),
              OptionalDouble.empty(),
              0));
    }
    if (chance(0.1)) {
      parts.add(new Loss(new VelocityHeadLoss(uniform(0, 20), bore), Optional.of(bore)));
    }
    if (chance(0.1)) {
      parts.add(new Gauge("gauge " + lines.size(), 0, Optional.of(bore)));
    }
    return parts;
  }

  private Pump pump() {
    double head = uniform(0.5, 10);
    double flow = uniform(5e-4, 8e-3);
    List<PumpPoint> sheet = new ArrayList<>();
    int rows = 2 + random.nextInt(5);
    for (int i = 0; i < rows; i++) {
      double x = (double) i / (rows - 1);
      double h =
          Math.max(
              0,
              head * (1 - Math.pow(x, 1.8))
                  + (i > 0 && i < rows - 1 ? uniform(-0.03, 0.03) * head : 0));
      sheet.add(new PumpPoint(x * flow, h, OptionalDouble.of(50 + 300 * x)));
    }
    Optional<VelocityHeadLoss> runsBack =
        chance(0.15) ? Optional.of(new VelocityHeadLoss(15, new Bore(0.04))) : Optional.empty();
    double speed = chance(0.1) ? 0 : chance(0.3) ? uniform(0.4, 1) : 1;
    PumpSet.Arrangement arrangement =
        chance(0.5) ? PumpSet.Arrangement.PARALLEL : PumpSet.Arrangement.SERIES;
    return new Pump(
        "random",
        new PumpSet(new PumpCurve(sheet), speed, 1 + random.nextInt(2), arrangement, runsBack));
  }

  private void join(String from, String to, List<Part> parts) {
    PointName start = new PointName(from);
    PointName end = new PointName(to);
    Optional<Bore> bore = parts.stream().map(Part::bore).flatMap(Optional::stream).findFirst();
    lines.add(
        new Line(
            new LineName("line " + lines.size()),
            start,
            end,
            bore,
            parts,
            new LineEnd(parts.get(0) instanceof Skimmer ? EndLoss.NONE : usualEnd(start), bore),
            new LineEnd(usualEnd(end), bore)));
  }

  private EndLoss usualEnd(PointName name) {
    return points.stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow()
        .usualEndLoss();
  }

  private boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  private double uniform(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }
}
