package rillwright.cli.page.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.picture.section.SectionPicture;
import rillwright.cli.report.picture.section.SectionPicture.ShutOff;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.Station;
import rillwright.curves.chart.content.SectionChart;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Symbol;

/**
 * The long section for a screen: the content of its picture laid out for the width that is there,
 * each piece to be touched. It is drawn within milliseconds and coloured by the page's style; the
 * picture to print is a panel.
 */
public final class Drawing {
  /** The narrowest that it is laid out for, px; narrower screens shrink it. */
  private static final int NARROWEST = 340;

  private static final int WIDEST = 1100;

  /** From this width on there is room for more height, px. */
  private static final int ROOMY = 600;

  private static final int LOW = 128;
  private static final int HIGH = 190;

  /** Less than this, m, does not fill the height. */
  private static final double FLAT_M = 0.3;

  private Drawing() {}

  /**
   * Draws it.
   *
   * @param widthPx of the screen's column
   */
  public static String of(Section section, int widthPx) {
    int width = Math.max(NARROWEST, Math.min(WIDEST, widthPx));
    SectionChart chart = SectionPicture.of(section, ShutOff.LEFT_OUT);
    List<DrawnStrip> strips = new ArrayList<>();
    for (int i = 0; i < chart.ways().size(); i++) {
      strips.addAll(DrawnStrip.of(chart.ways().get(i).name(), pieces(section, chart, i), width));
    }
    double tallest =
        strips.stream()
            .map(strip -> strip.levels(0, 1))
            .mapToDouble(it -> it.highestM() - it.lowestM())
            .max()
            .orElse(0);
    double pxPerM = (width < ROOMY ? LOW : HIGH) / Math.max(tallest, FLAT_M);
    Html drawn = new Html();
    double top = 0;
    for (DrawnStrip strip : strips) {
      DrawnLevels levels = strip.levels(top, pxPerM);
      strip.draw(drawn, levels, width);
      top = DrawnStrip.below(levels);
    }
    return new Html()
        .open(
            "svg",
            "viewBox",
            "0 0 " + width + " " + Math.round(top),
            "class",
            "drawing",
            "role",
            "group",
            "aria-label",
            "Long section: levels to scale, distances not. Each part opens its fields.")
        .made(drawn.done())
        .close()
        .done();
  }

  /** What is drawn of a way: its pieces and stations belong together in order, fittings apart. */
  private static List<DrawnPiece> pieces(Section section, SectionChart chart, int way) {
    List<Station> stations =
        section.ways().get(way).stations().stream()
            .filter(it -> !it.kind().equals(Optional.of("fitting")))
            .toList();
    List<Piece> pieces =
        chart.ways().get(way).pieces().stream()
            .filter(it -> it.symbol() != Symbol.FITTINGS)
            .toList();
    List<DrawnPiece> drawn = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      drawn.add(DrawnPiece.of(pieces.get(i), stations.get(i), section));
    }
    return drawn;
  }
}
