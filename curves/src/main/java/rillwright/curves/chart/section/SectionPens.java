package rillwright.curves.chart.section;

import java.awt.Color;
import java.util.List;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Pen;

/** How the lines of a section are drawn: distinguished by width and dashes, not by colour alone. */
public final class SectionPens {
  public static final Pen HEAD = new Pen(Ink.VERMILION, 3.4f, List.of());
  public static final Pen GAUGE_HEAD = new Pen(Ink.VERMILION, 2.8f, List.of(16f, 7f));
  public static final Pen REST = new Pen(Ink.AXIS, 3, List.of(2.5f, 7f));
  public static final Pen SHUT_OFF = new Pen(Ink.BLACK, 2.6f, List.of(22f, 6f, 4f, 6f));
  public static final Pen PIPE = new Pen(Ink.TEXT, 8, List.of());
  public static final Pen ASSUMED_PIPE = new Pen(Ink.TEXT, 8, List.of(9f, 5f));
  public static final Pen BORE = new Pen(new Color(0xC9DDEB), 4, List.of());
  public static final Pen SUCTION = new Pen(Ink.TEXT, 16, List.of(3f, 5f));
  public static final Pen SURFACE = new Pen(Ink.BLUE, 2.4f, List.of());
  public static final Pen GROUND = new Pen(Ink.TEXT, 3, List.of());
  public static final Pen EDGE = new Pen(Ink.TEXT, 2.2f, List.of());
  public static final Pen DASHED = new Pen(Ink.TEXT, 2.2f, List.of(5f, 4f));
  public static final Pen DROP = new Pen(Ink.GRID, 1.4f, List.of());
  public static final Pen FALLING = new Pen(Ink.BLUE, 2.6f, List.of(10f, 6f));
  static final Color WATER = new Color(0xD3E6F3);
  static final Color EARTH = new Color(0xE9E4DC);

  private SectionPens() {}
}
