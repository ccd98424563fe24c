package rillwright.cli.report.text.jobsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;

/** What is set by the laser, the highest first, and how deep pipe is usually laid. */
final class LevelsToSet {
  private record Level(String at, String what, double levelM) {}

  private final List<Level> levels = new ArrayList<>();

  private LevelsToSet() {}

  static void print(SheetAnswer answer, PageBuilder page) {
    Network network = answer.network();
    ShownUnits units = Shown.of(answer);
    LevelsToSet found = new LevelsToSet();
    found.points(network);
    network.lines().forEach(found::parts);
    TableBuilder table =
        new TableBuilder("SET BY LASER")
            .column("what", Side.LEFT)
            .column("level", Side.RIGHT)
            .column("as set", Side.LEFT);
    found.levels.stream()
        .sorted(Comparator.comparingDouble(Level::levelM).reversed())
        .forEach(
            it ->
                table.row(
                    it.at,
                    List.of(Cell.of(it.what), Cell.of(units.level(it.levelM)), Cell.toWrite())));
    page.table(table);
    page.paragraph(
        "All from the one mark that the file measures from, by laser or water level."
            + (network.placed(Run.class).isEmpty()
                ? ""
                : " The file holds no depth of trench: 12 to 18 in (300 to 450 mm) is usual, below"
                    + " frost or draining by itself (common practice, no source); no stretch of"
                    + " pipe higher than the file says. Local codes decide."));
  }

  private void points(Network network) {
    for (Basin basin : network.points(Basin.class)) {
      String at = basin.name().value();
      add(at, "water at rest", OptionalDouble.of(basin.levelM()));
      add(at, "overflow", basin.overflowM());
      add(at, "ground", basin.gradeM());
      add(at, "liner's edge", basin.linerEdgeM());
    }
    for (Chamber chamber : network.points(Chamber.class)) {
      String at = chamber.name().value();
      add(at, "floor", OptionalDouble.of(chamber.floorM()));
      add(at, "pump's intake", OptionalDouble.of(chamber.intakeM()));
      add(at, "top", chamber.topM());
    }
    for (Fall fall : network.points(Fall.class)) {
      add(fall.name().value(), "crest", OptionalDouble.of(fall.crestM()));
    }
    for (Outlet outlet : network.points(Outlet.class)) {
      add(outlet.name().value(), "end of the pipe", OptionalDouble.of(outlet.elevationM()));
    }
    for (Tee tee : network.points(Tee.class)) {
      add(tee.name().value(), "tee", tee.elevationM());
    }
  }

  private void parts(Line line) {
    String at = line.name().value();
    for (Placed<Skimmer> skimmer : line.placed(Skimmer.class)) {
      add(at, "skimmer's sill", OptionalDouble.of(skimmer.part().sillM()));
      add(at, "top of the skimmer's mouth", skimmer.part().mouthTopM());
    }
    for (Placed<HighPoint> high : line.placed(HighPoint.class)) {
      add(at, "high point of the pipe", OptionalDouble.of(high.part().elevationM()));
    }
    for (Placed<Gauge> gauge : line.placed(Gauge.class)) {
      add(at, "gauge " + gauge.part().name(), OptionalDouble.of(gauge.part().elevationM()));
    }
  }

  private void add(String at, String what, OptionalDouble level) {
    level.ifPresent(it -> levels.add(new Level(at, what, it)));
  }
}
