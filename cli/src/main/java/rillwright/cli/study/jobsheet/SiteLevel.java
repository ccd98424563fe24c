package rillwright.cli.study.jobsheet;

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
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;

/**
 * A level that something is built to.
 *
 * @param at name of the point or line
 * @param kind of level
 * @param levelM above the mark that the file measures from, m
 * @param widthM of what water pours over at that level, m; empty of others
 */
public record SiteLevel(String at, Kind kind, double levelM, OptionalDouble widthM) {
  /** What is at the level. */
  public enum Kind {
    WATER_AT_REST,
    OVERFLOW,
    GRADE,
    LINER_EDGE,
    CHAMBER_FLOOR,
    PUMP_INTAKE,
    CHAMBER_TOP,
    CREST,
    PIPE_END,
    TEE,
    SKIMMER_SILL,
    TOP_OF_SKIMMER_MOUTH,
    HIGH_POINT_OF_PIPE
  }

  /** Those that a network says, the highest first. */
  static List<SiteLevel> in(Network network) {
    List<SiteLevel> levels = new ArrayList<>();
    for (Basin basin : network.points(Basin.class)) {
      String at = basin.name().value();
      add(levels, at, Kind.WATER_AT_REST, OptionalDouble.of(basin.levelM()));
      add(levels, at, Kind.OVERFLOW, basin.overflowM());
      add(levels, at, Kind.GRADE, basin.gradeM());
      add(levels, at, Kind.LINER_EDGE, basin.linerEdgeM());
    }
    for (Chamber chamber : network.points(Chamber.class)) {
      String at = chamber.name().value();
      add(levels, at, Kind.CHAMBER_FLOOR, OptionalDouble.of(chamber.floorM()));
      add(levels, at, Kind.PUMP_INTAKE, OptionalDouble.of(chamber.intakeM()));
      add(levels, at, Kind.CHAMBER_TOP, chamber.topM());
    }
    for (Fall fall : network.points(Fall.class)) {
      levels.add(new SiteLevel(fall.name().value(), Kind.CREST, fall.crestM(), fall.widthM()));
    }
    for (Outlet outlet : network.points(Outlet.class)) {
      add(levels, outlet.name().value(), Kind.PIPE_END, OptionalDouble.of(outlet.elevationM()));
    }
    for (Tee tee : network.points(Tee.class)) {
      add(levels, tee.name().value(), Kind.TEE, tee.elevationM());
    }
    network.lines().forEach(line -> parts(line, levels));
    levels.sort(Comparator.comparingDouble(SiteLevel::levelM).reversed());
    return levels;
  }

  private static void parts(Line line, List<SiteLevel> levels) {
    String at = line.name().value();
    for (Placed<Skimmer> skimmer : line.placed(Skimmer.class)) {
      OptionalDouble mouthM = OptionalDouble.of(skimmer.part().widthM());
      levels.add(new SiteLevel(at, Kind.SKIMMER_SILL, skimmer.part().sillM(), mouthM));
      add(levels, at, Kind.TOP_OF_SKIMMER_MOUTH, skimmer.part().mouthTopM());
    }
    for (Placed<HighPoint> high : line.placed(HighPoint.class)) {
      OptionalDouble heightM = OptionalDouble.of(high.part().elevationM());
      add(levels, at, Kind.HIGH_POINT_OF_PIPE, heightM);
    }
  }

  private static void add(List<SiteLevel> levels, String at, Kind kind, OptionalDouble levelM) {
    levelM.ifPresent(it -> levels.add(new SiteLevel(at, kind, it, OptionalDouble.empty())));
  }
}
