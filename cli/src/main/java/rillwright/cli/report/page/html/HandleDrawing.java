package rillwright.cli.report.page.html;

import static org.apache.commons.text.StringEscapeUtils.escapeXml10;

import java.util.Locale;
import rillwright.cli.report.page.Handle;

/**
 * A valve seen from above, as SVG: the pipe from left to right, the handle along it where it is
 * open, turned clockwise by its degrees, and a quarter circle with a tick at every 15 degrees.
 */
final class HandleDrawing {
  private static final double QUARTER_TURN = 90;
  private static final int TICK_DEGREES = 15;

  private HandleDrawing() {}

  /** Its element; a handle that does not turn has none, its words alone tell it. */
  static String of(Handle handle) {
    if (handle.degreesFromOpen().isEmpty()) {
      return "";
    }
    double degrees = handle.degreesFromOpen().getAsDouble();
    StringBuilder svg = new StringBuilder();
    svg.append(
        """
        <svg viewBox="0 0 150 112" width="150" height="112" role="img" aria-label="%s">
        <path d="M2 42h146M2 70h146" fill="none" stroke="#8a9699" stroke-width="2"/>
        <circle cx="62" cy="56" r="21" fill="#fff" stroke="#1d2629" stroke-width="2"/>
        """
            .formatted(escapeXml10(handle.valve() + ": " + handle.words())));
    for (int tick = 0; tick <= QUARTER_TURN; tick += TICK_DEGREES) {
      svg.append(
          turned(
              "<path d=\"M%s 0h5\" stroke=\"#566469\"/>".formatted(tick % 45 == 0 ? 42 : 44),
              tick));
    }
    svg.append(
        turned(
            "<path d=\"M-13 -6h50a6 6 0 0 1 0 12h-50z\" fill=\"#1b6272\" stroke=\"#1d2629\"/>"
                + "<circle r=\"4\" fill=\"#fff\" stroke=\"#1d2629\"/>",
            degrees));
    return svg.append("</svg>\n").toString();
  }

  private static String turned(String shapes, double degrees) {
    return "<g transform=\"translate(62 56) rotate(%s)\">%s</g>\n"
        .formatted(String.format(Locale.ROOT, "%.1f", degrees), shapes);
  }
}
