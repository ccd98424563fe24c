package rillwright.cli.report.text.jobsheet;

import java.util.List;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.PartWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;
import rillwright.solver.network.Valve;

/** What lies in the trench, line by line, and what stands in it in the order of the water. */
final class PipeTable {
  private PipeTable() {}

  static void print(SheetAnswer answer, PageBuilder page) {
    ShownUnits units = Shown.of(answer);
    TableBuilder table =
        new TableBuilder("TRENCH AND PIPE")
            .column("from", Side.LEFT)
            .column("to", Side.LEFT)
            .column("pipe", Side.RIGHT)
            .column("parts, in flow order", Side.LEFT);
    for (Line line : answer.network().lines()) {
      if (line.has(Run.class)) {
        List<String> parts = line.parts().stream().map(part -> words(part, units)).toList();
        table.row(
            line.name().value(),
            line.from().value(),
            line.to().value(),
            units.length(
                line.placed(Run.class).stream().mapToDouble(run -> run.part().lengthM()).sum()),
            String.join("; ", parts));
      }
    }
    page.tableOfAny(table);
  }

  /** A part with a name needs no K in a trench; how far a valve is open stands with its setting. */
  private static String words(Part part, ShownUnits units) {
    if (part instanceof Valve valve && valve.adjustable()) {
      return part.label();
    }
    String words = PartWords.of(part, units);
    return part.label().equals(part.kind()) ? words : words.replaceFirst(" \\(K [^()]*\\)$", "");
  }
}
