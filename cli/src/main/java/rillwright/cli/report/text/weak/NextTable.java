package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.text.TextTable;
import rillwright.cli.report.text.TextTable.Side;
import rillwright.cli.report.weak.Letters;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.report.weak.RiskWords;
import rillwright.cli.report.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/** What to read next: what it tells, what it takes, what each likely cause predicts. */
final class NextTable {
  private static final int MOST_READINGS = 6;
  private static final int MOST_CAUSES = 3;
  private static final double WORTH_READING_BITS = 0.01;

  private NextTable() {}

  static void print(WeakAnswer answer, Page page) {
    List<NextReading> worth =
        answer.diagnosis().next().stream()
            .filter(next -> next.bits() >= WORTH_READING_BITS)
            .limit(MOST_READINGS)
            .toList();
    if (worth.isEmpty()) {
      page.heading("READ NEXT");
      page.paragraph("No further reading tells much; look at the likeliest cause itself.");
      return;
    }
    int causes = causesShown(answer);
    TextTable table =
        new TextTable("READ NEXT")
            .column("", Side.LEFT)
            .column("tells", Side.RIGHT)
            .column("work", Side.RIGHT);
    for (int c = 0; c < causes; c++) {
      table.column("by " + Letters.of(c), Side.RIGHT);
    }
    Set<Risk> risks = EnumSet.noneOf(Risk.class);
    for (int i = 0; i < worth.size(); i++) {
      NextReading next = worth.get(i);
      risks.add(next.what().effort().risk());
      table.row(
          Integer.toString(i + 1) + RiskWords.of(next.what().effort().risk()).mark(),
          cells(next, causes, new ReadingWords(answer.units())).toArray(new String[0]));
    }
    page.table(table);
    for (Risk risk : risks) {
      RiskWords words = RiskWords.of(risk);
      if (!words.mark().isEmpty()) {
        page.marked(words.mark() + " ", words.sentence());
      }
    }
  }

  /** Two at least, else the first group, as far as there is room. */
  private static int causesShown(WeakAnswer answer) {
    int wanted = Math.max(2, answer.diagnosis().firstGroup().size());
    return Math.min(Math.min(MOST_CAUSES, wanted), answer.diagnosis().causes().size());
  }

  private static List<String> cells(NextReading next, int causes, ReadingWords words) {
    List<String> cells = new ArrayList<>();
    cells.add(words.opening(next.what()));
    cells.add(String.format(Locale.ROOT, "%.2f bit", next.bits()));
    cells.add(next.what().effort().minutes() + " min");
    for (int c = 0; c < causes; c++) {
      OptionalDouble value = next.predicted().get(c).value();
      cells.add(value.isPresent() ? words.value(next.what(), value.getAsDouble()) : "anything");
    }
    return cells;
  }
}
