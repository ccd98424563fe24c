package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.weak.Lettered;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.inference.NextReading;

/**
 * The causes whose predictions stand in columns: the likeliest named ones.
 *
 * @param columns two or three, or one if no more are named
 * @param others likely ones that have no column
 */
record NextColumns(List<Lettered> columns, List<Lettered> others) {
  private static final int FEWEST = 2;
  private static final int MOST = 3;
  private static final double WORTH_NAMING = 0.01;

  static NextColumns of(WeakAnswer answer) {
    List<Lettered> named = Lettered.listNamed(answer);
    int group = answer.diagnosis().firstGroup().size();
    int inGroup = (int) named.stream().filter(cause -> cause.rank() < group).count();
    int count = Math.min(named.size(), Math.max(FEWEST, Math.min(MOST, inGroup)));
    List<Lettered> others =
        named.subList(count, named.size()).stream()
            .filter(
                cause -> cause.rank() < group || cause.explanation().probability() >= WORTH_NAMING)
            .toList();
    return new NextColumns(List.copyOf(named.subList(0, count)), others);
  }

  /** How many letters must be named for all columns to be understood. */
  int lettersUsed() {
    return columns.get(columns.size() - 1).rank() + 1;
  }

  /** What each column would read. */
  List<String> cells(NextReading next, ReadingWords words) {
    List<String> cells = new ArrayList<>();
    columns.forEach(column -> cells.add(shown(next, column, words)));
    return cells;
  }

  /** Whether all columns would read alike. */
  boolean areAlike(NextReading next, ReadingWords words) {
    return cells(next, words).stream().distinct().count() == 1;
  }

  /** The likeliest cause without a column that would read otherwise: "D: -15 in". */
  Optional<String> otherwise(NextReading next, ReadingWords words) {
    List<String> cells = cells(next, words);
    return others.stream()
        .filter(other -> !cells.contains(shown(next, other, words)))
        .map(other -> other.letter() + ": " + shown(next, other, words))
        .findFirst();
  }

  private static String shown(NextReading next, Lettered cause, ReadingWords words) {
    OptionalDouble value = next.predicted().get(cause.rank()).value();
    return words.expected(next.what(), value);
  }
}
