package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.law.weir.ThinPlateWeir;
import rillwright.solver.law.weir.VNotchWeir;
import rillwright.solver.law.weir.Weir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Nozzle;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.water.Water;

/**
 * Seeded random networks of all that the trade builds and a good deal that it does not: trees and
 * loops, several pumps anywhere in a line, falls at different heights or all at one, check valves
 * the wrong way round, dead ends, hoses from laminar to long and thin, syrup, shut valves, draws up
 * to the last drop that a skimmer passes, one or two chambers, starved or not.
 */
final class RandomNetwork {
  private final Dice dice;
  private final RandomParts random;
  private final List<Point> points = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();

  private RandomNetwork(long seed) {
    this.dice = new Dice(seed);
    this.random = new RandomParts(dice);
  }

  /** A network of {@code seed}; the same for the same seed. */
  static Network of(long seed) {
    return new RandomNetwork(seed).build();
  }

  private Network build() {
    addOpenWater();
    addChambers();
    String start = points.get(points.size() - 1).name().value();
    int tees = 1 + dice.below(dice.below(10) == 0 ? 20 : 5);
    for (int i = 0; i < tees; i++) {
      addTee(i, i == 0 ? start : "tee " + dice.below(i));
    }
    int ends = 1 + dice.below(4);
    for (int i = 0; i < ends; i++) {
      points.add(dice.chance(0.7) ? fall("end " + i) : outlet("end " + i));
      join("tee " + dice.below(tees), "end " + i, random.pipe(0));
    }
    int extra = dice.below(4);
    for (int i = 0; i < extra; i++) {
      String from = anyPoint();
      String to = anyPoint();
      if (!from.equals(to)) {
        join(from, to, random.pipe(0.2));
      }
    }
    return new Network(water(), 0, points, lines);
  }

  private String anyPoint() {
    return points.get(dice.below(points.size())).name().value();
  }

  private Water water() {
    return dice.chance(0.1)
        ? new Water(1000, dice.logUniform(1e-7, 1e-3), 2000)
        : Water.at(dice.uniform(2, 30));
  }

  private void addOpenWater() {
    double pond = dice.level(-0.3, 0.3);
    if (dice.chance(0.3)) {
      double beside = pond + (dice.chance(0.5) ? 0 : dice.logUniform(1e-12, 1e-3));
      points.add(basin("reservoir", dice.chance(0.2) ? beside : dice.level(-2, 5)));
    }
    points.add(basin("pond", pond));
  }

  private void addChambers() {
    if (!dice.chance(0.5)) {
      return;
    }
    points.add(chamber("chamber"));
    join("pond", "chamber", random.skimmer());
    if (dice.chance(0.3)) {
      join("pond", "chamber", random.pipe(0));
    }
    if (dice.chance(0.2)) {
      points.add(chamber("settling chamber"));
      join("chamber", "settling chamber", random.pipe(0.1));
      if (dice.chance(0.3)) {
        join("pond", "settling chamber", random.skimmer());
      }
    }
  }

  private static Basin basin(String name, double levelM) {
    OptionalDouble unknown = OptionalDouble.empty();
    return new Basin(new PointName(name), levelM, Optional.empty(), unknown, unknown, unknown);
  }

  private Chamber chamber(String name) {
    double floor = dice.uniform(-1, -0.4);
    OptionalDouble unknown = OptionalDouble.empty();
    return new Chamber(new PointName(name), floor, floor + 0.2, unknown, unknown);
  }

  private void addTee(int number, String before) {
    String name = "tee " + number;
    points.add(new Tee(new PointName(name), OptionalDouble.of(dice.uniform(-1, 4)), draw()));
    join(before, name, random.pipe(number == 0 ? 1 : 0.15));
  }

  /** Mostly none; at times all that the first skimmer passes, less next to nothing. */
  private double draw() {
    if (!dice.chance(0.08)) {
      return 0;
    }
    Optional<Line> skimming =
        lines.stream().filter(line -> line.parts().get(0) instanceof Skimmer).findFirst();
    if (skimming.isEmpty() || dice.chance(0.7)) {
      return dice.uniform(-1e-3, 1e-3);
    }
    Network soFar = new Network(Water.at(10), 0, points, lines);
    double most = soFar.lawOf(skimming.get()).greatestFlow();
    return most * (dice.chance(0.2) ? 1 : 1 - dice.logUniform(1e-12, 0.1));
  }

  private Fall fall(String name) {
    double width = dice.uniform(0.1, 1.2);
    Weir weir =
        switch (dice.below(5)) {
          case 0 -> PowerWeir.ofDischargeCoefficient(dice.uniform(0.5, 0.7), width);
          case 1 ->
              new ThinPlateWeir(
                  width,
                  dice.uniform(0.05, 0.4),
                  width * (dice.chance(0.5) ? 1 : dice.uniform(1, 3)));
          case 2 -> new VNotchWeir(dice.uniform(40, 100));
          default -> new PowerWeir(1.60, width, BrinkRule.FREE_OVERFALL);
        };
    return new Fall(
        new PointName(name),
        dice.level(0.1, 8),
        weir,
        0.3,
        OptionalDouble.empty(),
        Optional.empty());
  }

  private Outlet outlet(String name) {
    double elevation = dice.level(-0.5, 4);
    boolean underWater = dice.chance(0.4);
    Optional<Nozzle> nozzle =
        dice.chance(0.4)
            ? Optional.of(new Nozzle(new Bore(dice.uniform(0.003, 0.03)), 0.95))
            : Optional.empty();
    return new Outlet(
        new PointName(name),
        elevation,
        underWater
            ? OptionalDouble.of(dice.level(elevation, elevation + 1))
            : OptionalDouble.empty(),
        nozzle,
        OptionalDouble.empty());
  }

  private void join(String from, String to, List<Part> parts) {
    PointName start = new PointName(from);
    PointName end = new PointName(to);
    Optional<Bore> bore = parts.stream().map(Part::bore).flatMap(Optional::stream).findFirst();
    Part first = parts.get(0);
    boolean ownInlet = first instanceof Skimmer || first instanceof Pump;
    lines.add(
        new Line(
            new LineName("line " + lines.size()),
            start,
            end,
            bore,
            parts,
            new LineEnd(ownInlet ? EndLoss.NONE : endLoss(start), bore),
            new LineEnd(endLoss(end), bore)));
  }

  private EndLoss endLoss(PointName name) {
    Point point = points.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
    boolean given = !(point instanceof Tee) && dice.chance(0.1);
    return given ? EndLoss.bothWays(dice.uniform(0, 1.5)) : point.usualEndLoss();
  }
}
