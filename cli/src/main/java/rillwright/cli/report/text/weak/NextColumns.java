package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.weak.Lettered;
import rillwright.cli.report.weak.Letters;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.inference.Diagnosis;
import rillwright.solver.study.diagnosis.inference.NextReading;

/**
 * The causes whose predictions stand in columns: pairs, where they lead, and the likeliest named
 * ones.
 *
 * @param pairs numbers of the pairs that have a column
 * @param columns two or three, or one if no more are named
 * @param others likely ones that have no column
 */
record NextColumns(List<Integer> pairs, List<Lettered> columns, List<Lettered> others) {
  private static final int FEWEST = 2;
  private static final int MOST = 3;
  private static final double WORTH_NAMING = 0.01;

  static NextColumns of(WeakAnswer answer) {
    List<Lettered> named = Lettered.listNamed(answer);
    List<Integer> pairs = answer.diagnosis().pairsLead() ? apart(answer.diagnosis()) : List.of();
    int group = answer.diagnosis().firstGroup().size();
    int inGroup = (int) named.stream().filter(cause -> cause.rank() < group).count();
    int wanted = Math.max(FEWEST, Math.min(MOST, inGroup));
    int count = Math.min(named.size(), Math.max(1, wanted - pairs.size()));
    List<Lettered> others =
        named.subList(count, named.size()).stream()
            .filter(
                cause -> cause.rank() < group || cause.explanation().probability() >= WORTH_NAMING)
            .toList();
    return new NextColumns(pairs, List.copyOf(named.subList(0, count)), others);
  }

  /**
   * The likeliest pair, and the one from which the first reading to be taken tells it apart best.
   */
  private static List<Integer> apart(Diagnosis diagnosis) {
    int other = 0;
    double most = 0;
    for (NextReading next : diagnosis.next().stream().limit(1).toList()) {
      List<OptionalDouble> values = next.byPairs();
      for (int i = 1; i < values.size(); i++) {
        double apart = Math.abs(values.get(i).orElse(0) - values.get(0).orElse(0));
        if (apart > most) {
          most = apart;
          other = i;
        }
      }
    }
    return other == 0 ? List.of(0) : List.of(0, other);
  }

  /** What stands over the columns: "P1", "A". */
  List<String> labels() {
    List<String> labels = new ArrayList<>();
    pairs.forEach(pair -> labels.add(Letters.ofPair(pair)));
    columns.forEach(column -> labels.add(column.letter()));
    return labels;
  }

  /** How many letters must be named for all columns to be understood. */
  int lettersUsed() {
    return columns.get(columns.size() - 1).rank() + 1;
  }

  /** What each column would read. */
  List<String> cells(NextReading next, ReadingWords words) {
    List<String> cells = new ArrayList<>();
    for (int pair : pairs) {
      cells.add(words.expected(next.what(), next.byPairs().get(pair)));
    }
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
