package rillwright.curves.chart.svg;

import java.awt.Graphics2D;

/** A picture that can be painted on whatever takes strokes and words. */
public interface Painting {
  /** Width of the paper. */
  public int WIDTH = 1600;

  /** Height of the paper, unless more is needed. */
  public int HEIGHT = 1000;

  /** Height of its paper. */
  public default int height() {
    return HEIGHT;
  }

  public void paint(Graphics2D g);

  /** The picture in words. */
  public Description description();
}
