package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import rillwright.curves.chart.Words.Anchor;
import rillwright.curves.chart.content.CausesChart;
import rillwright.curves.chart.layout.TextBlock;

/** Paints causes: how likely each is on the left, predictions against readings on the right. */
final class CausesPainter implements Painting {
  private static final double MARGIN = 44;
  private static final double TOP = 34;
  private static final double ABOVE_PLOT = 76;
  private static final double BARS_WIDTH = 560;
  private static final double BETWEEN = 90;
  private static final int MOST_LINES = 2;

  private final CausesChart chart;

  CausesPainter(CausesChart chart) {
    this.chart = chart;
  }

  @Override
  public Description description() {
    return Description.of(
        chart.title(),
        Stream.of(
                Stream.of(chart.caption()),
                chart.causes().stream()
                    .map(cause -> cause.letter() + ", " + cause.name() + ": " + cause.label()),
                chart.strips().stream().map(CausesPainter::sentence))
            .flatMap(sentences -> sentences));
  }

  private static String sentence(CausesChart.Strip strip) {
    StringBuilder words = new StringBuilder(strip.name());
    strip.read().ifPresent(read -> words.append(", read ").append(read.label()));
    strip.asBuilt().ifPresent(mark -> words.append(", as built ").append(mark.label()));
    strip
        .marks()
        .forEach(
            mark -> words.append(", by ").append(mark.letter()).append(' ').append(mark.label()));
    return words.toString();
  }

  @Override
  public void paint(Graphics2D g) {
    g.setColor(Ink.PAPER);
    g.fill(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
    double wide = WIDTH - 2 * MARGIN;
    TextBlock title = TextBlock.wrapped(chart.title(), Ink.TITLE, wide, MOST_LINES);
    TextBlock caption = TextBlock.wrapped(chart.caption(), Ink.CAPTION, wide, MOST_LINES);
    Words.write(g, title, MARGIN, TOP, Anchor.START, Ink.TEXT);
    double captionTop = TOP + title.height() + 4;
    Words.write(g, caption, MARGIN, captionTop, Anchor.START, Ink.SOFT_TEXT);
    Legend legend = new Legend(wide);
    PredictionStrips.fill(legend, chart);
    double top = captionTop + caption.height() + ABOVE_PLOT;
    double legendTop = HEIGHT - MARGIN / 2 - legend.height();
    double height = legendTop - 30 - top;
    heading(g, "How likely", MARGIN, top - 50);
    new ProbabilityBars(chart.causes())
        .paint(g, new Rectangle2D.Double(MARGIN, top, BARS_WIDTH, height));
    double left = MARGIN + BARS_WIDTH + BETWEEN;
    if (!chart.strips().isEmpty()) {
      boolean read = chart.strips().stream().anyMatch(strip -> strip.read().isPresent());
      String andRead = read ? ", and what was read" : "";
      heading(g, "What each would read" + andRead, left, top - 50);
      new PredictionStrips(chart.strips())
          .paint(g, new Rectangle2D.Double(left, top, WIDTH - MARGIN - left, height));
    }
    legend.paint(g, MARGIN, legendTop);
  }

  private static void heading(Graphics2D g, String text, double x, double y) {
    TextBlock words = TextBlock.ofLines(List.of(text), Ink.AXIS_TITLE, Double.POSITIVE_INFINITY);
    Words.write(g, words, x, y, Anchor.START, Ink.TEXT);
  }
}
