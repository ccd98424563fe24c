package rillwright.cli.report.text.weak;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.weak.Lettered;
import rillwright.cli.report.weak.Letters;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.report.weak.RiskWords;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.reading.Reading;

/** What was read, against what it would be by the file and by the likeliest cause. */
final class ReadTable {
  private static final Set<Sign> TRIPS = Set.of(Sign.BREAKER_TRIPS, Sign.RUNS_HOT);

  private ReadTable() {}

  /** How many letters must be named for its column to be understood. */
  static int lettersUsed(WeakAnswer answer) {
    return Lettered.listNamed(answer).get(0).rank() + 1;
  }

  static void print(WeakAnswer answer, PageBuilder page) {
    Lettered first = Lettered.listNamed(answer).get(0);
    boolean pairs = answer.diagnosis().pairsLead();
    List<OptionalDouble> predicted =
        pairs ? answer.diagnosis().pairs().get(0).predicted() : first.explanation().predicted();
    ReadingWords words = new ReadingWords(Shown.of(answer));
    TableBuilder table =
        new TableBuilder("READ")
            .column("", Side.LEFT)
            .column("read", Side.RIGHT)
            .column("within", Side.RIGHT)
            .column("by the file", Side.RIGHT)
            .column(pairs ? "by " + Letters.ofPair(0) : "by cause " + first.letter(), Side.RIGHT);
    for (int i = 0; i < answer.diagnosis().readings().size(); i++) {
      Reading reading = answer.diagnosis().readings().get(i);
      table.row(
          Integer.toString(i + 1),
          words.opening(reading.what()),
          words.value(reading.what(), reading.value()),
          words.within(reading.what(), reading.tolerance()),
          shown(words, reading, answer.scope().asBuilt(reading.what())),
          shown(words, reading, predicted.get(i)));
    }
    page.tableOfAny(table);
    boolean idle =
        answer.diagnosis().readings().stream()
            .anyMatch(reading -> answer.scope().asBuilt(reading.what()).isEmpty());
    if (idle) {
      page.marked(
          "! ",
          "\"No reading\" by the file: the place is cut off on both sides, nothing holds the water"
              + " there, or the pump's data sheet has no power. Such readings do not count.");
    }
    if (!answer.visit().signs().isEmpty()) {
      page.paragraph(
          "Signs: "
              + answer.visit().signs().stream().map(Sign::words).collect(Collectors.joining(", "))
              + ".");
    }
    if (answer.visit().signs().stream().anyMatch(TRIPS::contains)) {
      page.marked("! ", RiskWords.TRIPS);
    }
  }

  private static String shown(ReadingWords words, Reading reading, OptionalDouble value) {
    return words.expected(reading.what(), value);
  }
}
