package rillwright.curves.chart.section;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Symbol;
import rillwright.curves.chart.content.SectionChart.Way;

/**
 * As much of a way as stands on the paper in one piece.
 *
 * @param name what stands above it
 * @param columns in the order the water meets them
 */
record Strip(String name, List<Column> columns) {
  /** By how much sooner a way is broken behind a fall than elsewhere. */
  private static final double FALL = 0.05;

  /** How much wider than it must be a column may be where that takes no more strips. */
  private static final double WIDER = 50;

  /** Less than this share of the paper's width is not worth a strip of its own. */
  private static final double LEAST_SHARE = 0.3;

  Strip {
    columns = List.copyOf(columns);
  }

  /** The strips of a way, none of them wider than the paper. */
  static List<Strip> of(Way way, double paperWidth) {
    List<Strip> easy = of(way, paperWidth, WIDER);
    List<Strip> tight = of(way, paperWidth, 0);
    return tight.size() < easy.size() ? tight : easy;
  }

  private static List<Strip> of(Way way, double paperWidth, double wider) {
    List<Column> left = way.pieces().stream().map(piece -> Column.of(piece, wider)).toList();
    List<Strip> strips = new ArrayList<>();
    while (!left.isEmpty()) {
      int end = endOf(left, paperWidth);
      String name = strips.isEmpty() ? way.name() : way.name() + ", continued";
      strips.add(new Strip(name, left.subList(0, end)));
      left = left.subList(end, left.size());
    }
    return strips;
  }

  /** How many of the columns come first: to a fall if it can be, so that all is as full. */
  private static int endOf(List<Column> left, double paperWidth) {
    double whole = widthOf(left);
    if (whole <= paperWidth) {
      return left.size();
    }
    double aim = whole / Math.ceil(whole / paperWidth);
    int fits = 0;
    int best = 1;
    double bestMiss = Double.POSITIVE_INFINITY;
    for (double width = 0; fits < left.size(); ) {
      width += left.get(fits).leastWidth();
      if (width > paperWidth && fits > 0) {
        break;
      }
      Symbol symbol = left.get(fits).piece().symbol();
      fits++;
      boolean behindFall = symbol == Symbol.FALL && whole - width > LEAST_SHARE * paperWidth;
      double miss = Math.abs(width - aim) * (behindFall ? FALL : 1);
      if (miss <= bestMiss) {
        bestMiss = miss;
        best = fits;
      }
    }
    return best;
  }

  private static double widthOf(List<Column> columns) {
    return columns.stream().mapToDouble(Column::leastWidth).sum();
  }

  /** The least that all columns take. */
  double leastWidth() {
    return widthOf(columns);
  }

  /** Height of the words below it. */
  double wordsHeight() {
    return columns.stream().mapToDouble(Column::wordsHeight).max().orElse(0);
  }

  /** All levels that are drawn in it, m. */
  DoubleStream levelsM() {
    return columns.stream().map(Column::piece).flatMapToDouble(Strip::levelsM);
  }

  private static DoubleStream levelsM(Piece piece) {
    Stream<OptionalDouble> water =
        piece.water().stream()
            .flatMap(
                it ->
                    Stream.of(it.startM(), it.endM(), it.edgeM(), OptionalDouble.of(it.bottomM())));
    Stream<OptionalDouble> sides =
        Stream.of(piece.start(), piece.end())
            .flatMap(
                side ->
                    Stream.of(
                        OptionalDouble.of(side.levelM()),
                        side.headM(),
                        side.gaugeHeadM(),
                        side.restHeadM(),
                        side.shutOffHeadM()));
    return Stream.concat(water, sides).flatMapToDouble(OptionalDouble::stream);
  }
}
