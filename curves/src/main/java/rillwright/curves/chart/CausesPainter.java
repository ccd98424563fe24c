package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.stream.Stream;
import rillwright.curves.chart.content.CausesChart;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.svg.Description;
import rillwright.curves.chart.svg.Painting;

/** Paints causes: how likely each is on the left, predictions against readings on the right. */
final class CausesPainter implements Painting {
  private static final double ABOVE_PLOT = 76;
  private static final double BARS_WIDTH = 560;
  private static final double BETWEEN = 90;

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
    strip.asBuilt().ifPresent(mark -> words.append(", by the file ").append(mark.label()));
    strip
        .marks()
        .forEach(
            mark -> words.append(", by ").append(mark.letter()).append(' ').append(mark.label()));
    return words.toString();
  }

  @Override
  public void paint(Graphics2D g) {
    Legend legend = new Legend(Sheet.WIDE);
    PredictionStrips.fill(legend, chart);
    Sheet sheet = Sheet.begin(g, chart, legend, height());
    double top = sheet.top() + ABOVE_PLOT;
    double height = sheet.bottom() - 30 - top;
    Words.heading(g, "How likely", Sheet.MARGIN, top - 50);
    Bars.ofCauses(chart.causes())
        .paint(g, new Rectangle2D.Double(Sheet.MARGIN, top, BARS_WIDTH, height));
    double left = Sheet.MARGIN + BARS_WIDTH + BETWEEN;
    if (!chart.strips().isEmpty()) {
      boolean read = chart.strips().stream().anyMatch(strip -> strip.read().isPresent());
      String andRead = read ? ", and what was read" : "";
      Words.heading(g, "What each would read" + andRead, left, top - 50);
      new PredictionStrips(chart.strips())
          .paint(g, new Rectangle2D.Double(left, top, WIDTH - Sheet.MARGIN - left, height));
    }
    sheet.end(g);
  }
}
