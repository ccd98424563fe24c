package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Tee;

/** What is laid out so that it is more likely a slip in the file than meant. */
final class LayoutDetector implements NetworkDetector {

  /** More than this above or below all open water is no garden's, m; common practice, no source. */
  private static final double FARTHEST_M = 30;

  /** Depth from which on bad air in a chamber counts, m: 4 ft; common practice, no source. */
  private static final double CONFINED_M = 1.2192;

  @Override
  public List<Finding> findIn(Network network) {
    List<Finding> findings = new ArrayList<>();
    for (Fall fall : network.points(Fall.class)) {
      OptionalDouble water = waterBelow(network, fall);
      boolean comesBack = network.isPumped() || fall.returnsTo().isPresent();
      if (comesBack && water.isPresent() && fall.crestM() <= water.getAsDouble()) {
        findings.add(crestNotAboveWater(fall.name().value(), water.getAsDouble() - fall.crestM()));
      }
    }
    for (Point point : network.points()) {
      String name = point.name().value();
      heightM(point).ifPresent(height -> farFromWater(network, name, height, findings));
    }
    for (Chamber chamber : network.points(Chamber.class)) {
      double depth = chamber.topM().orElse(highestWater(network)) - chamber.floorM();
      if (depth > CONFINED_M) {
        findings.add(confinedSpace(chamber.name().value(), depth));
      }
      double above = chamber.intakeM() - highestWater(network);
      if (above > 0 && isFedByBasins(network, chamber)) {
        findings.add(intakeAboveWater(chamber.name().value(), above));
      }
    }
    for (Line line : network.lines()) {
      for (Placed<HighPoint> high : line.placed(HighPoint.class)) {
        farFromWater(network, line.name().value(), high.part().elevationM(), findings);
      }
      boolean pumped = line.has(Pump.class) || line.has(PlannedPump.class);
      Point to = network.point(line.to());
      if (pumped
          && network.point(line.from()) instanceof Fall
          && (to instanceof Basin || to instanceof Chamber)) {
        findings.add(pumpsOutOfAFall(line));
      }
    }
    return findings;
  }

  /** The height of what stands above or below open water; empty for open water itself. */
  private static OptionalDouble heightM(Point point) {
    if (point instanceof Fall fall) {
      return OptionalDouble.of(fall.crestM());
    }
    if (point instanceof Chamber chamber) {
      return OptionalDouble.of(chamber.floorM());
    }
    if (point instanceof Outlet outlet) {
      return OptionalDouble.of(outlet.elevationM());
    }
    return point instanceof Tee tee ? tee.elevationM() : OptionalDouble.empty();
  }

  private static void farFromWater(
      Network network, String at, double heightM, List<Finding> findings) {
    network.points(Basin.class).stream()
        .min(Comparator.comparingDouble(basin -> Math.abs(heightM - basin.levelM())))
        .filter(basin -> Math.abs(heightM - basin.levelM()) > FARTHEST_M)
        .ifPresent(basin -> findings.add(far(at, basin.name().value(), heightM - basin.levelM())));
  }

  private static double highestWater(Network network) {
    return network.points(Basin.class).stream()
        .mapToDouble(Basin::levelM)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** The level that a fall pours into: of the basin that it names, else of the lowest one. */
  private static OptionalDouble waterBelow(Network network, Fall fall) {
    if (fall.returnsTo().isPresent()) {
      Point basin = network.point(fall.returnsTo().get());
      return basin instanceof Basin named
          ? OptionalDouble.of(named.levelM())
          : OptionalDouble.empty();
    }
    return network.points(Basin.class).stream().mapToDouble(Basin::levelM).min();
  }

  /**
   * A fall whose crest does not stand above the water that it falls into. Water that nothing pumps
   * comes from above and does not go back there, unless the file says so.
   */
  private static Finding crestNotAboveWater(String at, double belowM) {
    Finding crest =
        Finding.of(
            Severity.PROBLEM, "crest-not-above-water", at, "The crest of \"" + at + "\" lies ");
    return (belowM == 0
            ? crest.then("level with the water")
            : crest.depth("belowWater", belowM).then(" below the water"))
        .then(
            " that it should fall into: check the sign, and that all levels are measured from one"
                + " mark.");
  }

  /** Whether nothing but the level of basins brings water into a chamber. */
  private static boolean isFedByBasins(Network network, Chamber chamber) {
    List<Line> in =
        network.lines().stream().filter(line -> line.to().equals(chamber.name())).toList();
    return !in.isEmpty()
        && in.stream()
            .allMatch(
                line ->
                    network.point(line.from()) instanceof Basin
                        && !line.has(Pump.class)
                        && !line.has(PlannedPump.class));
  }

  /** A pump's intake above all the water that could run to it. */
  private static Finding intakeAboveWater(String at, double aboveM) {
    return Finding.of(
            Severity.PROBLEM, "intake-above-water", at, "The pump's intake in \"" + at + "\" lies ")
        .depth("aboveWater", aboveM)
        .then(
            " above the water that feeds it, so nothing comes to the pump: check the sign (a level"
                + " below the water has a minus), and that all levels are measured from one mark.");
  }

  /** A chamber so deep that bad air may gather in it. */
  private static Finding confinedSpace(String at, double depthM) {
    return Finding.of(Severity.DANGER, "confined-space", at, "\"" + at + "\" is ")
        .length("depth", depthM)
        .then(
            " deep. If it is closed, bad air can gather in it and kill: nobody climbs in alone or"
                + " before the air is tested; follow local rules for confined spaces.");
  }

  /** Something much higher or lower than a garden is. */
  private static Finding far(String at, String basin, double aboveM) {
    return Finding.of(Severity.ADVICE, "doubtful-level", at, "\"" + at + "\" lies ")
        .length("distance", Math.abs(aboveM))
        .then(
            (aboveM > 0 ? " above" : " below")
                + " the water of \""
                + basin
                + "\": check the unit of its level, and that all levels are measured from one"
                + " mark.");
  }

  /** A line whose ends are exchanged. */
  private static Finding pumpsOutOfAFall(Line line) {
    return Finding.of(
            Severity.PROBLEM,
            "ends-exchanged",
            line.name().value(),
            "The pump in \""
                + line.name().value()
                + "\" draws from the fall \""
                + line.from().value()
                + "\" and delivers into \""
                + line.to().value()
                + "\".")
        .thenHint();
  }
}
