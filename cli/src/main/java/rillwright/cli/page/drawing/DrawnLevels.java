package rillwright.cli.page.drawing;

import java.util.Locale;

/**
 * Where levels lie on the screen.
 *
 * @param lowestM lowest that is drawn, m
 * @param highestM highest that is drawn, m
 * @param top of the strip, px
 * @param pxPerM scale
 */
record DrawnLevels(double lowestM, double highestM, double top, double pxPerM) {
  /** Room above the highest level, px: a line of words. */
  static final double ABOVE = 34;

  double y(double levelM) {
    return top + ABOVE + pxPerM * (highestM - levelM);
  }

  /** Where the strip's words begin. */
  double foot() {
    return y(lowestM);
  }

  /** A coordinate as SVG writes it. */
  static String px(double px) {
    return String.format(Locale.ROOT, "%.1f", px);
  }
}
