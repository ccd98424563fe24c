package rillwright.curves.chart;

import java.awt.Graphics2D;

/** A picture that can be painted on whatever takes strokes and words. */
interface Painting {
  /** Width of the paper. */
  int WIDTH = 1600;

  /** Height of the paper, unless more is needed. */
  int HEIGHT = 1000;

  /** Height of its paper. */
  default int height() {
    return HEIGHT;
  }

  void paint(Graphics2D g);

  /** The picture in words. */
  Description description();
}
