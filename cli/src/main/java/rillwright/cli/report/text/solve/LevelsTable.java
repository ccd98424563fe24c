package rillwright.cli.report.text.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.Feeders;
import rillwright.cli.study.solve.Solved;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Water levels: what is held and what the balance finds, against sills, intakes and edges. */
final class LevelsTable {
  private final SteadyState state;
  private final ShownUnits units;

  private LevelsTable(Solved solved) {
    this.state = solved.state();
    this.units = Shown.of(solved);
  }

  static void print(Solved solved, PageBuilder page) {
    LevelsTable levels = new LevelsTable(solved);
    TableBuilder table =
        new TableBuilder("LEVELS").column("level", Side.RIGHT).column("where it stands", Side.LEFT);
    for (PointState point : solved.state().points()) {
      List<String> notes = levels.notes(point);
      if (!notes.isEmpty()) {
        String level = point.headM().isPresent() ? levels.level(point) : "not known";
        table.row(point.point().name().value(), level, String.join("; ", notes));
      }
    }
    page.tableOfAny(table);
    if (solved.job().streams() && !table.isEmpty()) {
      List<Basin> basins = solved.state().network().points(Basin.class);
      String atRest =
          "Levels with "
              + (basins.size() == 1
                  ? PlainText.quoted(basins.get(0).name().value())
                  : "what feeds the streams")
              + " kept at rest by topping up; without that the stream takes water from there as it"
              + " fills.";
      page.paragraph(atRest + " \"rillwright stream\" gives the levels that it runs at.", atRest);
    }
  }

  /** A held level as it is written, another as it is computed. */
  private String level(PointState point) {
    double head = point.headM().orElseThrow();
    return units.level(head);
  }

  private List<String> notes(PointState point) {
    List<String> notes = new ArrayList<>();
    if (point.point() instanceof Basin basin) {
      notes.add("held");
      sills(basin, notes);
      if (basin.overflowM().isPresent()) {
        notes.add(against(basin.levelM(), basin.overflowM().getAsDouble(), "its overflow"));
      }
    } else if (point.point() instanceof Chamber chamber) {
      chamber(point, chamber, notes);
    }
    return notes;
  }

  private void sills(Basin basin, List<String> notes) {
    for (Line line : state.network().lines()) {
      for (Part part : line.parts()) {
        if (line.from().equals(basin.name()) && part instanceof Skimmer skimmer) {
          String sill = "the skimmer's sill in \"" + line.name().value() + "\"";
          notes.add(against(basin.levelM(), skimmer.sillM(), sill));
        }
      }
    }
  }

  private void chamber(PointState point, Chamber chamber, List<String> notes) {
    OptionalDouble head = point.headM();
    if (head.isEmpty()) {
      notes.add("nothing determines it");
      return;
    }
    for (Basin basin : Feeders.listBasins(state.network(), chamber)) {
      notes.add(against(head.getAsDouble(), basin.levelM(), basin.name().value()));
    }
    if (point.isStarved()) {
      notes.add("down at " + intake(chamber) + ": starved");
    } else {
      notes.add(against(head.getAsDouble(), chamber.intakeM(), intake(chamber)));
    }
  }

  /** What is at a chamber's intake: a pump that stands in it, or where a pipe begins. */
  private String intake(Chamber chamber) {
    List<Part> first = new ArrayList<>();
    boolean pumped = false;
    for (Line line : state.network().lines()) {
      if (line.from().equals(chamber.name())) {
        line.parts().stream().limit(1).forEach(first::add);
        pumped |= line.parts().stream().anyMatch(Pump.class::isInstance);
      }
    }
    return first.stream().anyMatch(Pump.class::isInstance)
        ? "the pump's intake"
        : pumped ? "the mouth of the suction pipe" : "its intake";
  }

  /** "5 in above the sill". */
  private String against(double level, double mark, String words) {
    double above = level - mark;
    String depth = units.depth(Math.abs(above));
    return depth.startsWith("0 ")
        ? "level with " + words
        : depth + (above < 0 ? " below " : " above ") + words;
  }
}
