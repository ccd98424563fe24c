package rillwright.curves.chart;

import java.awt.Color;
import java.awt.Font;

/**
 * Colours and fonts.
 *
 * <p>Source of the colours of curves: Okabe, M. and Ito, K. (2008), Color Universal Design (from
 * memory), without those too pale for white paper.
 */
final class Ink {
  static final Color BLUE = new Color(0x0072B2);
  static final Color VERMILION = new Color(0xD55E00);
  static final Color GREEN = new Color(0x009E73);
  static final Color BLACK = Color.BLACK;
  static final Color PAPER = Color.WHITE;
  static final Color TEXT = new Color(0x1A1A1A);
  static final Color SOFT_TEXT = new Color(0x4A4A4A);
  static final Color AXIS = new Color(0x6E6E6E);
  static final Color GRID = new Color(0xDDDDDD);
  static final Color OUT_OF_REACH = new Color(0, 0, 0, 14);

  static final Font TITLE = font(Font.BOLD, 36);
  static final Font CAPTION = font(Font.PLAIN, 25);
  static final Font AXIS_TITLE = font(Font.BOLD, 25);
  static final Font TICK = font(Font.PLAIN, 24);
  static final Font LABEL = font(Font.BOLD, 24);
  static final Font SMALL_LABEL = font(Font.BOLD, 20);
  static final Font NOTE = font(Font.PLAIN, 23);
  static final Font LEGEND = font(Font.PLAIN, 23);

  private Ink() {}

  private static Font font(int style, int size) {
    return new Font(Font.SANS_SERIF, style, size);
  }
}
