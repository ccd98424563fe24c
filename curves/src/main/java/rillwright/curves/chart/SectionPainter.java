package rillwright.curves.chart;

import java.awt.Graphics2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import rillwright.curves.chart.content.SectionChart;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Side;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.chart.section.LevelScale;
import rillwright.curves.chart.section.Row;
import rillwright.curves.chart.section.SectionPens;
import rillwright.curves.chart.svg.Description;
import rillwright.curves.chart.svg.Painting;

/** Paints long sections, one way of the water below the other, all on one scale of levels. */
final class SectionPainter implements Painting {
  /** Less than this, m, is below any measurement. */
  private static final double NOTICEABLE_M = 1e-6;

  /** Differences of level below this, m, do not fill a picture. */
  private static final double FLAT_M = 0.05;

  /** Height of the levels of the tallest row: of one row alone, and of each of several. */
  private static final double ALONE = 560;

  private static final double OF_FEW = 400;
  private static final double OF_MANY = 300;
  private static final int MANY = 4;

  private final SectionChart chart;
  private final List<Row> rows;
  private final LevelScale scale;
  private final Legend legend = new Legend(Sheet.WIDE);

  SectionPainter(SectionChart chart) {
    this.chart = chart;
    this.rows = Row.of(chart.ways(), Sheet.WIDE);
    double lowest = rows.stream().mapToDouble(Row::lowestM).min().orElseThrow();
    double highest = rows.stream().mapToDouble(Row::highestM).max().orElseThrow();
    double tallest =
        rows.stream().mapToDouble(row -> row.highestM() - row.lowestM()).max().orElseThrow();
    double height = rows.size() == 1 ? ALONE : rows.size() < MANY ? OF_FEW : OF_MANY;
    this.scale =
        LevelScale.of(chart.levelUnit(), lowest, highest, height / Math.max(tallest, FLAT_M));
    fillLegend();
  }

  private Stream<Piece> pieces() {
    return chart.ways().stream().flatMap(way -> way.pieces().stream());
  }

  private void fillLegend() {
    legend("total head, running", SectionPens.HEAD, Side::headM);
    legend("what a gauge shows", SectionPens.GAUGE_HEAD, Side::gaugeHeadM);
    legend("water at rest", SectionPens.REST, Side::restHeadM);
    legend("against a shut valve", SectionPens.SHUT_OFF, Side::shutOffHeadM);
    boolean assumed =
        pieces()
            .filter(piece -> piece.symbol().isInPipe())
            .anyMatch(piece -> !piece.start().sure() || !piece.end().sure());
    if (assumed) {
      legend.add("pipe whose level is not given", SectionPens.ASSUMED_PIPE);
    }
    boolean suction = pieces().anyMatch(piece -> isUnderSuction(piece));
    if (suction) {
      legend.add("pipe below atmospheric pressure", SectionPens.SUCTION);
    }
  }

  private static boolean isUnderSuction(Piece piece) {
    return piece.symbol().isInPipe()
        && Stream.of(piece.start(), piece.end())
            .anyMatch(side -> side.suctionM().orElse(0) > NOTICEABLE_M);
  }

  private void legend(String name, Pen pen, Function<Side, OptionalDouble> head) {
    if (pieces().anyMatch(piece -> head.apply(piece.start()).isPresent())) {
      legend.add(name, pen);
    }
  }

  @Override
  public int height() {
    double all = rows.stream().mapToDouble(row -> row.height(scale)).sum();
    return (int) Math.ceil(Sheet.headHeight(chart) + all + legend.height() + Sheet.MARGIN);
  }

  @Override
  public Description description() {
    return Description.of(
        chart.title(),
        Stream.concat(
            Stream.of(chart.caption()),
            chart.ways().stream()
                .flatMap(
                    way ->
                        Stream.concat(
                            Stream.of(way.name()),
                            way.pieces().stream().map(SectionPainter::sentence)))));
  }

  private static String sentence(Piece piece) {
    return String.join(
        ", ", Stream.concat(Stream.of(piece.name()), piece.figures().stream()).toList());
  }

  @Override
  public void paint(Graphics2D g) {
    Sheet sheet = Sheet.begin(g, chart, legend, height());
    double top = sheet.top();
    for (Row row : rows) {
      row.paint(g, Sheet.MARGIN, top, scale);
      top += row.height(scale);
    }
    sheet.end(g);
  }
}
