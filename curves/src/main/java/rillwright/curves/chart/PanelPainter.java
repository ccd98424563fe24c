package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import rillwright.curves.chart.content.Panel;
import rillwright.curves.chart.content.PanelChart;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.svg.Description;
import rillwright.curves.chart.svg.Painting;

/** Paints plots under one title. */
final class PanelPainter implements Painting {
  private static final double ABOVE_PLOT = 66;
  private static final double BELOW_PLOT = 92;
  private static final double BELOW_PLOT_UNTITLED = 50;
  private static final double BETWEEN = 46;

  /** More than two rows of plots need more paper, so much for each. */
  private static final int MORE_PAPER = 400;

  private final PanelChart chart;
  private final List<String> names;

  PanelPainter(PanelChart chart) {
    this.chart = chart;
    this.names = chart.names();
  }

  @Override
  public Description description() {
    Stream<String> panels =
        chart.panels().stream()
            .map(
                panel ->
                    panel.upTitle()
                        + (panel.acrossTitle().isEmpty() ? "" : " against " + panel.acrossTitle()));
    Stream<String> marks =
        chart.panels().stream()
            .flatMap(panel -> Stream.concat(panel.levels().stream(), panel.places().stream()))
            .map(Panel.Mark::label);
    return Description.of(
        chart.title(),
        Stream.concat(
            Stream.concat(Stream.of(chart.caption()), panels),
            Stream.concat(Stream.of("Curves: " + String.join(", ", names)), marks)));
  }

  @Override
  public int height() {
    return HEIGHT + MORE_PAPER * Math.max(0, rows() - 2);
  }

  private int columns() {
    return Math.min(chart.columns(), chart.panels().size());
  }

  private int rows() {
    return (chart.panels().size() + columns() - 1) / columns();
  }

  @Override
  public void paint(Graphics2D g) {
    Legend legend = new Legend(Sheet.WIDE);
    names.forEach(name -> legend.add(name, Pen.panel(names.indexOf(name))));
    Sheet sheet = Sheet.begin(g, chart, legend, height());
    paintPanels(g, sheet.top(), sheet.bottom());
    sheet.end(g);
  }

  private void paintPanels(Graphics2D g, double top, double bottom) {
    int columns = columns();
    double wide = (Sheet.WIDE - (columns - 1) * BETWEEN) / columns;
    double high = (bottom - top) / rows();
    List<PanelPlot> plots =
        chart.panels().stream().map(panel -> new PanelPlot(panel, names)).toList();
    double before = plots.stream().mapToDouble(plot -> plot.axes().leftWidth()).max().orElse(0);
    double behind = plots.stream().mapToDouble(plot -> plot.axes().rightWidth()).max().orElse(0);
    for (int i = 0; i < plots.size(); i++) {
      Panel panel = chart.panels().get(i);
      int row = i / columns;
      double left = Sheet.MARGIN + (i - row * columns) * (wide + BETWEEN);
      double plotTop = top + row * high + ABOVE_PLOT;
      double below = panel.acrossTitle().isEmpty() ? BELOW_PLOT_UNTITLED : BELOW_PLOT;
      double plotLeft = left + before;
      plots
          .get(i)
          .paint(
              g,
              new Rectangle2D.Double(
                  Math.rint(plotLeft),
                  Math.rint(plotTop),
                  Math.rint(left + wide - behind - plotLeft),
                  Math.rint(high - ABOVE_PLOT - below)));
    }
  }
}
