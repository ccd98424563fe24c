package rillwright.cli.page.drawing;

import static rillwright.cli.page.drawing.DrawnLevels.px;

import rillwright.cli.page.desk.Places;
import rillwright.cli.page.html.Html;
import rillwright.curves.chart.content.SectionChart.OpenWater;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Symbol;

/**
 * A piece at its place on the screen.
 *
 * @param piece what is drawn
 * @param left edge of its column, px
 * @param right edge of its column, px
 */
record DrawnCell(DrawnPiece piece, double left, double right) {
  private static final double SIZE = 9;

  double centre() {
    return (left + right) / 2;
  }

  private Piece drawn() {
    return piece.piece();
  }

  /** Open water and what holds it. */
  void drawWater(Html svg, DrawnLevels levels) {
    drawn().water().ifPresent(water -> water(svg, levels, water));
    if (drawn().symbol() == Symbol.FALLING) {
      double top = levels.y(drawn().start().levelM());
      double foot = levels.y(drawn().end().levelM());
      String curve =
          "M%s %sQ%s %s %s %s"
              .formatted(px(left), px(top), px(centre()), px(top), px(centre() + 2), px(foot));
      shape(svg, "path", "fallen", "d", curve);
    }
  }

  private void water(Html svg, DrawnLevels levels, OpenWater water) {
    double bottom = levels.y(water.bottomM());
    double inset = drawn().symbol() == Symbol.BASIN ? Math.min(8, (right - left) / 5) : 1;
    boolean slopes = drawn().symbol() == Symbol.REACH || drawn().symbol() == Symbol.STEP;
    if (water.startM().isPresent() && water.endM().isPresent()) {
      double from = levels.y(water.startM().getAsDouble());
      double to = levels.y(water.endM().getAsDouble());
      double end = levels.y(drawn().end().levelM());
      String body =
          "M%s %sL%s %sL%s %sL%s %sZ"
              .formatted(
                  px(left),
                  px(from),
                  px(right),
                  px(to),
                  px(right - inset),
                  px(slopes ? end : Math.max(bottom, end)),
                  px(left + inset),
                  px(slopes ? levels.y(drawn().start().levelM()) : bottom));
      shape(svg, "path", "water", "d", body);
    }
    double edge =
        levels.y(Math.max(water.edgeM().orElse(drawn().start().levelM()), water.bottomM()));
    double last = drawn().symbol() == Symbol.REACH ? levels.y(drawn().end().levelM()) : bottom;
    String wall =
        slopes
            ? "M%s %sL%s %s"
                .formatted(px(left), px(levels.y(drawn().start().levelM())), px(right), px(last))
            : "M%s %sL%s %sL%s %sL%s %s"
                .formatted(
                    px(left),
                    px(edge),
                    px(left + inset),
                    px(bottom),
                    px(right - inset),
                    px(bottom),
                    px(right),
                    px(drawn().symbol() == Symbol.FALL ? levels.y(drawn().end().levelM()) : edge));
    shape(svg, "path", "wall", "d", wall);
  }

  /** Its symbol on the pipe. */
  void drawSymbol(Html svg, DrawnLevels levels) {
    double x = centre();
    boolean pumps = drawn().symbol() == Symbol.PUMP;
    double start = levels.y(drawn().start().levelM());
    double y = pumps ? start : (start + levels.y(drawn().end().levelM())) / 2;
    switch (drawn().symbol()) {
      case PUMP -> {
        shape(svg, "circle", "part", "cx", px(x), "cy", px(y), "r", px(SIZE + 1));
        shape(svg, "path", "mark", "d", polygon(x, y, -5, -6, 9, 0, -5, 6));
      }
      case VALVE -> shape(svg, "path", "part", "d", polygon(x, y, -9, -6, 9, 6, 9, -6, -9, 6));
      case SKIMMER ->
          shape(svg, "path", "part", "d", polygon(x, y, -8, -9, 8, -9, 8, 5, 0, 9, -8, 5));
      case FILTER -> shape(svg, "path", "part", "d", polygon(x, y, -8, -8, 8, -8, 8, 8, -8, 8));
      case CHECK_VALVE ->
          shape(
              svg,
              "path",
              "part",
              "d",
              polygon(x, y, -8, -6, 6, 0, 6, -6, 8, -6, 8, 6, 6, 6, 6, 0, -8, 6));
      case GAUGE -> {
        shape(svg, "path", "wall", "d", "M%s %sv-11".formatted(px(x), px(y - 3)));
        shape(svg, "circle", "part", "cx", px(x), "cy", px(y - 19), "r", "6");
        shape(svg, "path", "wall", "d", "M%s %sl3 -3".formatted(px(x), px(y - 19)));
      }
      case LOSS -> shape(svg, "path", "part", "d", polygon(x, y, 0, -7, 7, 0, 0, 7, -7, 0));
      case HIGH_POINT -> shape(svg, "path", "part", "d", polygon(x, y, -7, 4, 0, -8, 7, 4));
      case TEE -> shape(svg, "circle", "mark", "cx", px(x), "cy", px(y), "r", "4.5");
      case OUTLET -> shape(svg, "path", "part", "d", polygon(x, y, -6, -6, 6, 0, -6, 6));
      default -> {}
    }
  }

  /** Where it is touched. */
  void drawTouch(Html svg, DrawnLevels levels, double words) {
    if (piece.address().isEmpty() || right - left < 1) {
      return;
    }
    svg.open("a", "href", "#" + Places.id(piece.address().get()), "class", "touch");
    svg.leaf("title", piece.said());
    shape(
        svg,
        "rect",
        "zone",
        "x",
        px(left),
        "y",
        px(levels.top() + DrawnLevels.ABOVE / 2),
        "width",
        px(right - left),
        "height",
        px(levels.foot() - levels.top() - DrawnLevels.ABOVE / 2 + words));
    svg.close();
  }

  private static void shape(Html svg, String element, String kind, String... attributes) {
    String[] all = new String[attributes.length + 2];
    all[0] = "class";
    all[1] = kind;
    System.arraycopy(attributes, 0, all, 2, attributes.length);
    svg.leaf(element, "", all);
  }

  private static String polygon(double x, double y, double... corners) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < corners.length; i += 2) {
      path.append(i == 0 ? "M" : "L").append(px(x + corners[i])).append(' ');
      path.append(px(y + corners[i + 1]));
    }
    return path.append('Z').toString();
  }
}
