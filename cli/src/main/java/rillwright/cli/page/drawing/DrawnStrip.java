package rillwright.cli.page.drawing;

import static rillwright.cli.page.drawing.DrawnLevels.px;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.cli.page.html.Html;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Side;
import rillwright.curves.chart.content.SectionChart.Symbol;

/**
 * As much of a way as stands side by side on the screen.
 *
 * @param name above it
 * @param pieces in the order the water meets them
 */
record DrawnStrip(String name, List<DrawnPiece> pieces) {
  private static final double LINE = 15;
  private static final int WORD_ROWS = 3;
  private static final double LETTER = 6.4;
  private static final double MARGIN = 2;

  DrawnStrip {
    pieces = List.copyOf(pieces);
  }

  /** Where it is drawn: no higher than its levels need. */
  DrawnLevels levels(double top, double pxPerM) {
    DoubleSummaryStatistics levels =
        pieces.stream().flatMapToDouble(DrawnPiece::levelsM).summaryStatistics();
    return new DrawnLevels(levels.getMin(), levels.getMax(), top, pxPerM);
  }

  /** Where the next strip may begin, px. */
  static double below(DrawnLevels levels) {
    return levels.foot() + LINE * WORD_ROWS + 10;
  }

  /** A way in as many strips as it needs, all of them about as full. */
  static List<DrawnStrip> of(String name, List<DrawnPiece> pieces, double width) {
    double whole = leastWidth(pieces);
    double aim = whole / Math.ceil(whole / width);
    List<DrawnStrip> strips = new ArrayList<>();
    List<DrawnPiece> now = new ArrayList<>();
    for (DrawnPiece piece : pieces) {
      double with = leastWidth(now) + leastWidth(List.of(piece));
      if (!now.isEmpty() && (with > width || leastWidth(now) > aim)) {
        strips.add(new DrawnStrip(strips.isEmpty() ? name : name + ", continued", now));
        now.clear();
      }
      now.add(piece);
    }
    strips.add(new DrawnStrip(strips.isEmpty() ? name : name + ", continued", now));
    return strips;
  }

  private static double leastWidth(List<DrawnPiece> pieces) {
    return pieces.stream().mapToDouble(DrawnPiece::leastWidth).sum();
  }

  /** Draws it. */
  void draw(Html svg, DrawnLevels levels, double width) {
    List<DrawnCell> cells = cells(width);
    svg.leaf("text", name, "x", px(MARGIN), "y", px(levels.top() + 12), "class", "way");
    cells.forEach(cell -> cell.drawWater(svg, levels));
    pipe(svg, cells, levels, "pipe");
    pipe(svg, cells, levels, "bore");
    line(svg, cells, levels, "head", Side::headM);
    cells.forEach(cell -> cell.drawSymbol(svg, levels));
    words(svg, cells, levels, width);
    cells.forEach(cell -> cell.drawTouch(svg, levels, LINE * WORD_ROWS));
  }

  private List<DrawnCell> cells(double width) {
    double least = leastWidth(pieces);
    double room = Math.max(0, width - least);
    double stretching = pieces.stream().filter(DrawnPiece::stretches).count();
    List<DrawnCell> cells = new ArrayList<>();
    double x = 0;
    for (DrawnPiece piece : pieces) {
      double more = stretching > 0 ? 0.6 * room / stretching : 0;
      double share = (stretching > 0 ? 0.4 : 1) * room / pieces.size();
      double wide = piece.leastWidth() + share + (piece.stretches() ? more : 0);
      cells.add(new DrawnCell(piece, x, x + wide));
      x += wide;
    }
    return cells;
  }

  private static void pipe(Html svg, List<DrawnCell> cells, DrawnLevels levels, String kind) {
    StringBuilder path = new StringBuilder();
    boolean on = false;
    for (DrawnCell cell : cells) {
      Piece piece = cell.piece().piece();
      if (!piece.symbol().isInPipe()) {
        on = false;
        continue;
      }
      double from = levels.y(piece.start().levelM());
      double to = levels.y(piece.end().levelM());
      path.append(on ? "L" : "M").append(px(cell.left())).append(' ').append(px(from));
      if (piece.symbol() == Symbol.PUMP) {
        path.append('L').append(px(cell.centre())).append(' ').append(px(from));
        path.append('L').append(px(cell.centre())).append(' ').append(px(to));
      }
      path.append('L').append(px(cell.right())).append(' ').append(px(to));
      on = true;
    }
    if (!path.isEmpty()) {
      svg.empty("path", "d", path.toString(), "class", kind);
      svg.made("</path>");
    }
  }

  private static void line(
      Html svg,
      List<DrawnCell> cells,
      DrawnLevels levels,
      String kind,
      Function<Side, OptionalDouble> head) {
    StringBuilder path = new StringBuilder();
    boolean on = false;
    for (DrawnCell cell : cells) {
      on = to(path, on, cell.left(), head.apply(cell.piece().piece().start()), levels);
      if (cell.piece().piece().symbol() == Symbol.PUMP) {
        on = to(path, on, cell.centre(), head.apply(cell.piece().piece().start()), levels);
        on = to(path, on, cell.centre(), head.apply(cell.piece().piece().end()), levels);
      }
      on = to(path, on, cell.right(), head.apply(cell.piece().piece().end()), levels);
    }
    if (!path.isEmpty()) {
      svg.empty("path", "d", path.toString(), "class", kind);
      svg.made("</path>");
    }
  }

  private static boolean to(
      StringBuilder path, boolean on, double x, OptionalDouble headM, DrawnLevels levels) {
    if (headM.isEmpty()) {
      return false;
    }
    path.append(on ? "L" : "M").append(px(x)).append(' ');
    path.append(px(levels.y(headM.getAsDouble())));
    return true;
  }

  /** Words stand in the first row in which there is room. */
  private static void words(Html svg, List<DrawnCell> cells, DrawnLevels levels, double width) {
    double[] taken = new double[WORD_ROWS];
    for (DrawnCell cell : cells) {
      String words = cell.piece().words();
      double half = words.length() * LETTER / 2;
      double x = Math.max(half + MARGIN, Math.min(width - half - MARGIN, cell.centre()));
      for (int row = 0; row < WORD_ROWS && !words.isEmpty(); row++) {
        if (x - half >= taken[row]) {
          taken[row] = x + half + LETTER;
          double y = levels.foot() + LINE * (row + 1);
          svg.leaf("text", words, "x", px(x), "y", px(y), "class", "word");
          break;
        }
      }
    }
  }
}
