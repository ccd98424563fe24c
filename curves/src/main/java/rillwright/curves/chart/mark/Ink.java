package rillwright.curves.chart.mark;

import java.awt.Color;
import java.awt.Font;

/**
 * Colours and fonts.
 *
 * <p>Source of the colours of curves: Okabe, M. and Ito, K. (2008), Color Universal Design (from
 * memory), without those too pale for white paper.
 */
public final class Ink {
  public static final Color BLUE = new Color(0x0072B2);
  public static final Color VERMILION = new Color(0xD55E00);
  public static final Color GREEN = new Color(0x009E73);
  public static final Color BLACK = Color.BLACK;
  public static final Color PAPER = Color.WHITE;
  public static final Color TEXT = new Color(0x1A1A1A);
  public static final Color SOFT_TEXT = new Color(0x4A4A4A);
  public static final Color AXIS = new Color(0x6E6E6E);
  public static final Color GRID = new Color(0xDDDDDD);
  public static final Color OUT_OF_REACH = new Color(0, 0, 0, 14);

  public static final Font TITLE = font(Font.BOLD, 36);
  public static final Font CAPTION = font(Font.PLAIN, 25);
  public static final Font AXIS_TITLE = font(Font.BOLD, 25);
  public static final Font TICK = font(Font.PLAIN, 24);
  public static final Font LABEL = font(Font.BOLD, 24);
  public static final Font SMALL_LABEL = font(Font.BOLD, 20);
  public static final Font NOTE = font(Font.PLAIN, 23);
  public static final Font SMALL = font(Font.PLAIN, 19);
  public static final Font LEGEND = font(Font.PLAIN, 23);

  private Ink() {}

  private static Font font(int style, int size) {
    return new Font(Font.SANS_SERIF, style, size);
  }
}
