package rillwright.curves.chart.section;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import rillwright.curves.chart.content.SectionChart.Way;

/**
 * Strips side by side, on one scale of levels.
 *
 * @param strips one or more
 * @param paperWidth what they fill
 */
public record Row(List<Strip> strips, double paperWidth) {
  private static final double SCALE_WIDTH = 66;
  private static final double BETWEEN = 26;
  private static final double ABOVE_PLOT = 62;
  private static final double BELOW_WORDS = 18;

  /** Room above and below what is drawn. */
  private static final double PAD = 26;

  private static final double LEAST_PLOT = 130;

  /** By how much a piece is stretched at most. */
  private static final double MOST_STRETCH = 420;

  /** By how much all are widened where nothing has a length, as a share. */
  private static final double MOST_SPREAD = 0.5;

  public Row {
    strips = List.copyOf(strips);
  }

  /** The rows of some ways: a short way stands beside an earlier one where there is room. */
  public static List<Row> of(List<Way> ways, double paperWidth) {
    List<List<Strip>> rows = new ArrayList<>();
    for (Way way : ways) {
      List<Strip> strips = Strip.of(way, paperWidth - SCALE_WIDTH);
      for (Strip strip : strips) {
        rows.stream()
            .filter(row -> strips.size() == 1)
            .filter(row -> leastWidth(row) + leastWidth(List.of(strip)) + BETWEEN <= paperWidth)
            .findFirst()
            .ifPresentOrElse(
                row -> row.add(strip), () -> rows.add(new ArrayList<>(List.of(strip))));
      }
    }
    return rows.stream().map(row -> new Row(row, paperWidth)).toList();
  }

  private static double leastWidth(List<Strip> strips) {
    double columns = strips.stream().mapToDouble(Strip::leastWidth).sum();
    return columns + strips.size() * (SCALE_WIDTH + BETWEEN) - BETWEEN;
  }

  private DoubleStream levelsM() {
    return strips.stream().flatMapToDouble(Strip::levelsM);
  }

  /** The lowest that is drawn, m. */
  public double lowestM() {
    return levelsM().min().orElseThrow();
  }

  /** The highest that is drawn, m. */
  public double highestM() {
    return levelsM().max().orElseThrow();
  }

  /** Height of its plot. */
  private double plotHeight(LevelScale scale) {
    return Math.max(LEAST_PLOT, 2 * PAD + scale.length(highestM() - lowestM()));
  }

  /** Height of all of it. */
  public double height(LevelScale scale) {
    double words = strips.stream().mapToDouble(Strip::wordsHeight).max().orElse(0);
    return ABOVE_PLOT + plotHeight(scale) + words + BELOW_WORDS;
  }

  /** Paints it. */
  public void paint(Graphics2D g, double left, double top, LevelScale scale) {
    double height = plotHeight(scale);
    double spare = (height - 2 * PAD - scale.length(highestM() - lowestM())) / 2;
    double baseY = Math.rint(top + ABOVE_PLOT + height - PAD - spare);
    LevelScale placed = scale.with(lowestM(), baseY);
    double x = left;
    for (Strip strip : strips) {
      x += SCALE_WIDTH;
      Profile profile =
          new Profile(strip, widths(strip), x, Math.rint(top + ABOVE_PLOT), height, placed);
      profile.paint(g);
      x += profile.width() + BETWEEN;
    }
  }

  /** Room that is left goes to what has a length, then to all alike. */
  private List<Double> widths(Strip strip) {
    double length =
        strips.stream()
            .flatMap(it -> it.columns().stream())
            .mapToDouble(column -> column.piece().lengthM())
            .sum();
    double room = Math.max(0, paperWidth - leastWidth(strips));
    List<Double> widths = new ArrayList<>();
    for (Column column : strip.columns()) {
      double share = length > 0 ? column.piece().lengthM() / length : 0;
      double alike = length > 0 ? 0 : Math.min(MOST_SPREAD * column.leastWidth(), room);
      widths.add(column.leastWidth() + Math.min(MOST_STRETCH, room * share) + alike);
    }
    double whole = widths.stream().mapToDouble(Double::doubleValue).sum();
    double most = strip.leastWidth() + room;
    return widths.stream().map(width -> width * Math.min(1, most / whole)).toList();
  }
}
