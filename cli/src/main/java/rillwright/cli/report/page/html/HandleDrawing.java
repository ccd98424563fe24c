package rillwright.cli.report.page.html;

import static org.apache.commons.text.StringEscapeUtils.escapeXml10;

import java.util.Locale;
import rillwright.cli.report.page.Handle;

/**
 * A valve seen from above, as SVG: the pipe from left to right, the handle along it where it is
 * open, turned clockwise by its degrees, and a quarter circle with a tick at every 15 degrees.
 */
final class HandleDrawing {
  private static final int QUARTER_TURN = 90;
  private static final int TICK_DEGREES = 15;
  private static final int LONG_TICK_DEGREES = 45;

  private HandleDrawing() {}

  /** Its element; a handle that does not turn has none, its words alone say it. */
  static String of(Handle handle) {
    if (handle.degreesFromOpen().isEmpty()) {
      return "";
    }
    StringBuilder svg = new StringBuilder();
    svg.append(
        """
        <svg viewBox="0 0 170 124" width="170" height="124" role="img" aria-label="%s">
        <path d="M4 34h28m44 0h90M4 62h28m44 0h90" fill="none" stroke="#8a9699" stroke-width="2"/>
        <circle cx="54" cy="48" r="26" fill="#eef2f2" stroke="#1d2629" stroke-width="2"/>
        <path d="M118 48a64 64 0 0 1 -64 64" fill="none" stroke="#566469"/>
        <text x="126" y="52" font-size="12" font-family="sans-serif" fill="#1d2629">open</text>
        <text x="16" y="116" font-size="12" font-family="sans-serif" fill="#1d2629">shut</text>
        """
            .formatted(escapeXml10(handle.valve() + ": " + handle.words())));
    for (int tick = 0; tick <= QUARTER_TURN; tick += TICK_DEGREES) {
      int from = tick % LONG_TICK_DEGREES == 0 ? 56 : 60;
      svg.append(turned("<path d=\"M%d 0H64\" stroke=\"#566469\"/>".formatted(from), tick));
    }
    svg.append(
        turned(
            "<path d=\"M-14 -7h62a7 7 0 0 1 0 14h-62z\" fill=\"#1b6272\" stroke=\"#1d2629\"/>"
                + "<circle r=\"4\" fill=\"#fff\" stroke=\"#1d2629\"/>",
            handle.degreesFromOpen().getAsDouble()));
    return svg.append("</svg>\n").toString();
  }

  private static String turned(String shapes, double degrees) {
    return "<g transform=\"translate(54 48) rotate(%s)\">%s</g>\n"
        .formatted(String.format(Locale.ROOT, "%.1f", degrees), shapes);
  }
}
