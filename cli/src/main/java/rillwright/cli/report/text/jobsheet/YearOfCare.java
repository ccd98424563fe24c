package rillwright.cli.report.text.jobsheet;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.Cautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.SheetAnswer.AsSet;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;
import rillwright.solver.stream.LevelBudget;

/**
 * What to do in each season, of what this job has; common practice, no source. Losses of water are
 * those of its levels.
 */
final class YearOfCare {
  private final SheetAnswer answer;
  private final ShownUnits units;

  private YearOfCare(SheetAnswer answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
  }

  static void print(SheetAnswer answer, PageBuilder page) {
    YearOfCare care = new YearOfCare(answer);
    TableBuilder table = new TableBuilder("CARE THROUGH THE YEAR").column("", Side.LEFT);
    table.row("spring", String.join(" ", care.spring()));
    table.row("summer", String.join(" ", care.summer()));
    table.row("autumn", String.join(" ", care.autumn()));
    table.row("winter", String.join(" ", care.winter()));
    table.row("call us if", String.join(" ", care.call()));
    page.table(table);
  }

  private boolean has(Class<? extends Part> kind) {
    return answer.network().lines().stream().anyMatch((Line line) -> line.has(kind));
  }

  private boolean isPumped() {
    return Cautions.isPumped(answer.network());
  }

  private List<String> spring() {
    List<String> all = new ArrayList<>();
    if (isPumped()) {
      all.add("Clean the pump's cage and test its ground-fault protection before it runs.");
    }
    all.add("Look for stones that frost has moved and for water beside the falls.");
    if (has(Valve.class)) {
      all.add("Leave marked valves where they stand.");
    }
    return all;
  }

  private List<String> summer() {
    List<String> all = new ArrayList<>();
    for (LevelBudget basin : basins()) {
      if (basin.lossMPerDay().orElse(0) > 0) {
        all.add(
            "\""
                + basin.basin().name().value()
                + "\" loses about "
                + units.depth(basin.lossMPerDay().getAsDouble())
                + " a day"
                + (basin.daysToStarve().orElse(0) > 0
                    ? "; top it up before "
                        + units.days(basin.daysToStarve().getAsDouble())
                        + " are over."
                    : "; top it up."));
      }
    }
    if (all.isEmpty()) {
      all.add("Top up what evaporates.");
    }
    all.add("Fill with the hose above the water, never under it.");
    return all;
  }

  private List<LevelBudget> basins() {
    return answer
        .asSet()
        .flatMap(AsSet::stream)
        .map(stream -> stream.budget().basins())
        .orElse(List.of());
  }

  private List<String> autumn() {
    List<String> all = new ArrayList<>();
    if (has(Skimmer.class)) {
      all.add(
          "Empty the skimmer's net as often as leaves fall: when the water behind it stands lower"
              + " than usual, it is full.");
    }
    if (has(Filter.class)) {
      all.add("Rinse the filter.");
    }
    all.add("Take leaves off the falls and out of the pond.");
    return all;
  }

  private List<String> winter() {
    return isPumped()
        ? List.of(
            "Where it freezes: switch off, let the pipes run empty, take the pump out and keep it"
                + " in water free of frost.",
            "Where it runs on: watch the level, ice can lead water over the edge.")
        : List.of("Where it freezes: shut the water off and let the pipes run empty.");
  }

  private List<String> call() {
    List<String> all = new ArrayList<>();
    all.add(
        has(Skimmer.class)
            ? "a fall runs thin though the skimmer's net is clean;"
            : "a fall runs thin;");
    all.add("the water falls faster than usual;");
    if (isPumped()) {
      all.add("the pump is loud, hums without water, or trips its protection.");
    } else {
      all.add("water stands where it did not.");
    }
    return all;
  }
}
