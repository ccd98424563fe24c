package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.report.weak.RiskWords;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;
import rillwright.solver.study.diagnosis.reading.MeasurandList;

/**
 * What to read next: what it tells, what it takes, what each likely cause predicts. Where the
 * causes in columns would all read alike, one that would not stands beside them; a reading that no
 * cause named would show otherwise is left out.
 */
public final class NextTable {
  private static final int MOST_READINGS = 8;
  private static final double WORTH_READING_BITS = 0.05;

  /** From so much on a reading tells some, then much: common practice, no source. */
  private static final double SOME_BITS = 0.3;

  private static final double MUCH_BITS = 0.7;

  private final WeakAnswer answer;
  private final ReadingWords words;
  private final NextColumns causes;
  private final List<NextReading> rows;

  private NextTable(WeakAnswer answer) {
    this.answer = answer;
    this.words = new ReadingWords(Shown.of(answer));
    this.causes = NextColumns.of(answer);
    this.rows =
        answer.diagnosis().next().stream()
            .filter(next -> next.bits() >= WORTH_READING_BITS)
            .filter(
                next -> !causes.areAlike(next, words) || causes.otherwise(next, words).isPresent())
            .limit(MOST_READINGS)
            .toList();
  }

  /** The readings that are proposed, the best first. */
  public static List<NextReading> shown(WeakAnswer answer) {
    return new NextTable(answer).rows;
  }

  static NextTable of(WeakAnswer answer) {
    return new NextTable(answer);
  }

  /** How many letters must be named for its columns to be understood. */
  int lettersUsed() {
    return rows.isEmpty() ? 0 : causes.lettersUsed();
  }

  void print(PageBuilder page) {
    if (rows.isEmpty()) {
      page.heading("READ NEXT");
      boolean noneLeads = !answer.diagnosis().isExplained();
      page.paragraph(
          noneLeads
              ? "No further reading adds much. " + LeastFitting.readAgain(answer) + "."
              : "No further reading adds much; inspect the most likely cause itself.");
      return;
    }
    page.table(table());
    page.paragraph(
        "In order of what a minute of work is expected to tell. \"Much\" is nearly what a sure yes"
            + " or no tells of two causes that are equally likely; \"little\" seldom changes the"
            + " order."
            + valvesLeftOut());
    Set<Risk> risks = EnumSet.noneOf(Risk.class);
    rows.forEach(row -> risks.add(row.what().effort().risk()));
    for (Risk risk : risks) {
      RiskWords caution = RiskWords.of(risk, answer.isPumped());
      if (!caution.mark().isEmpty()) {
        page.marked(caution.mark() + " ", caution.sentence());
      }
    }
  }

  private String valvesLeftOut() {
    int valves = MeasurandList.countValvesForGauges(answer.scope().job().network());
    int most = MeasurandList.MOST_VALVES_SHUT;
    return valves > most
        ? " Gauges with a valve shut are considered for the first "
            + most
            + " of "
            + valves
            + " valves."
        : "";
  }

  private TableBuilder table() {
    TableBuilder table =
        new TableBuilder("READ NEXT")
            .column("", Side.LEFT)
            .column("tells", Side.LEFT)
            .column("work", Side.RIGHT);
    causes.labels().forEach(label -> table.column("by " + label, Side.RIGHT));
    boolean anyAlike = rows.stream().anyMatch(row -> causes.areAlike(row, words));
    if (anyAlike) {
      table.column("but", Side.LEFT);
    }
    for (int i = 0; i < rows.size(); i++) {
      NextReading row = rows.get(i);
      String mark = RiskWords.of(row.what().effort().risk(), answer.isPumped()).mark();
      List<String> cells = cells(row);
      if (anyAlike) {
        boolean alike = causes.areAlike(row, words);
        cells.add(alike ? causes.otherwise(row, words).orElseThrow() : "");
      }
      table.row(Integer.toString(i + 1) + mark, cells.toArray(new String[0]));
    }
    return table;
  }

  /** What a number of bits is to a crew. */
  private static String tells(double bits) {
    return bits >= MUCH_BITS ? "much" : bits >= SOME_BITS ? "some" : "little";
  }

  private List<String> cells(NextReading next) {
    List<String> cells = new ArrayList<>();
    cells.add(words.opening(next.what()));
    cells.add(tells(next.bits()));
    cells.add(next.what().effort().minutes() + " min");
    cells.addAll(causes.cells(next, words));
    return cells;
  }
}
