package rillwright.cli.report.text.stream;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.Listing;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Skimmer;
import rillwright.solver.stream.FirstFill;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.StarveLevel;
import rillwright.solver.stream.StreamBudget;

/** What becomes of the levels of basins. */
final class LevelsTable {
  private static final String NONE = "";
  private static final double UNSEEN_M = 0.001;

  private final StreamBudget budget;
  private final ShownUnits units;
  private final PageBuilder page;

  private LevelsTable(StreamBudget budget, ShownUnits units, PageBuilder page) {
    this.budget = budget;
    this.units = units;
    this.page = page;
  }

  static void print(StreamBudget budget, ShownUnits units, PageBuilder page) {
    LevelsTable levels = new LevelsTable(budget, units, page);
    budget.basins().forEach(levels::basin);
  }

  private void basin(LevelBudget basin) {
    TableBuilder table =
        new TableBuilder("LEVELS OF \"" + basin.basin().name().value() + "\"")
            .column("level", Side.RIGHT)
            .column("against rest", Side.RIGHT)
            .column("", Side.LEFT);
    double rest = basin.restLevelM();
    table.row("at rest", level(rest), NONE, "pump off, pools full");
    row(table, "running", basin.runningLevelM(), rest, running(basin));
    row(table, "starves at", basin.starveLevelM(), rest, starving(basin));
    row(table, "after a stop", basin.stoppedLevelM(), rest, stopped(basin));
    marks(basin).forEach(mark -> row(table, mark.name(), mark.levelM(), rest, mark.words()));
    page.table(table);
    if (basin.starve().stream().anyMatch(it -> !it.drawsAir() && Double.isFinite(it.levelM()))) {
      page.paragraph(
          "The skimmer only just passes the flow at the level where it carries what runs now and no"
              + " more: any lower, less comes to the pump than it takes.");
    }
    if (!budget.running().state().network().points(Chamber.class).isEmpty()) {
      page.paragraph(
          "The level after a stop is a little high: that chambers rise with it is left out.");
    }
    String filled = filled(basin.firstFill());
    if (basin.firstFillM3() > 0 && !filled.isEmpty()) {
      page.paragraph(
          "The first start takes "
              + units.volume(basin.firstFillM3())
              + " out of \""
              + basin.basin().name().value()
              + "\", with nothing topped up while it runs: "
              + filled
              + ". What does not come back has to be added.");
    }
  }

  private String filled(FirstFill fill) {
    List<String> words = new ArrayList<>();
    String given = "";
    Iterator<String> volumes = units.volumes(List.copyOf(fill.volumeM3().values())).iterator();
    for (FirstFill.Item item : fill.volumeM3().keySet()) {
      String volume = volumes.next();
      if (volume.startsWith("-")) {
        given =
            ", less the "
                + volume.substring(1)
                + " that chambers give, which stand lower while it runs";
      } else if (!volume.startsWith("0 ")) {
        words.add(volume + filled(item));
      }
    }
    return words.isEmpty() ? "" : Listing.of(words) + given;
  }

  private static String filled(FirstFill.Item item) {
    return switch (item) {
      case TRANSIT -> " in transit, which come back at a stop";
      case POOLS -> " in pools below their crests";
      case GRAVEL -> " in gravel that does not drain";
      case PIPES -> " in pipes that stay full";
      case BOXES -> " in boxes below their crests";
      case CHAMBERS -> " in chambers that stand higher";
    };
  }

  private record Mark(String name, OptionalDouble levelM, String words) {}

  private List<Mark> marks(LevelBudget budgetOfBasin) {
    Basin basin = budgetOfBasin.basin();
    List<Mark> marks = new ArrayList<>();
    for (Skimmer skimmer : budget.running().state().network().skimmersOf(basin.name())) {
      marks.add(new Mark("skimmer's sill", OptionalDouble.of(skimmer.sillM()), ""));
      marks.add(new Mark("top of its mouth", skimmer.mouthTopM(), ""));
    }
    String taken = basin.overflowM().isPresent() ? "" : "taken at the top of the mouth";
    marks.add(new Mark("overflow", budgetOfBasin.overflowM(), taken));
    marks.add(new Mark("grade", basin.gradeM(), ""));
    marks.add(new Mark("liner's edge", basin.linerEdgeM(), ""));
    return marks;
  }

  private void row(
      TableBuilder table, String name, OptionalDouble level, double rest, String words) {
    if (level.isPresent() && Double.isFinite(level.getAsDouble())) {
      table.row(name, level(level.getAsDouble()), against(level.getAsDouble() - rest), words);
    }
  }

  private String level(double levelM) {
    return units.level(levelM);
  }

  private String against(double differenceM) {
    String depth = units.depth(Math.abs(differenceM));
    String sign = depth.startsWith("0 ") ? "" : differenceM > 0 ? "+" : "-";
    return sign + depth;
  }

  private String running(LevelBudget basin) {
    String loss =
        basin.lossMPerDay().isPresent()
            ? ", then falls "
                + units.depth(basin.lossMPerDay().getAsDouble())
                + " a day by evaporation and splash"
            : "";
    return "once the stream has filled, nothing topped up" + loss;
  }

  private String starving(LevelBudget basin) {
    String when =
        basin.daysToStarve().isPresent()
            ? basin.daysToStarve().getAsDouble() > 0
                ? "; reached in " + units.days(basin.daysToStarve().getAsDouble())
                : "; reached as the stream fills"
            : "";
    return basin.starve().map(this::why).orElse("") + when;
  }

  private String why(StarveLevel starve) {
    if (!starve.drawsAir()) {
      return "the skimmer only just passes the flow";
    }
    return (starve.coverM() > 0
            ? "the pump draws air: it needs " + units.depth(starve.coverM()) + " over its inlet"
            : "the pump draws air")
        + (starve.lowerM() < UNSEEN_M
            ? ""
            : ", where the water stands " + units.depth(starve.lowerM()) + " lower");
  }

  private String stopped(LevelBudget basin) {
    return "if it was topped up while running"
        + (basin.runsOverM3() > 0
            ? "; " + units.volume(basin.runsOverM3()) + " of it runs over"
            : "");
  }
}
