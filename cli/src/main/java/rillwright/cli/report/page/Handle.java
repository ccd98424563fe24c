package rillwright.cli.report.page;

import java.util.OptionalDouble;
import rillwright.curves.wording.PlainText;

/**
 * A valve's handle as it is to stand.
 *
 * @param valve which
 * @param degreesFromOpen 0 along the pipe to 90 across; empty where no handle turns so
 * @param words how it is to stand
 */
public record Handle(String valve, OptionalDouble degreesFromOpen, String words) {
  public Handle {
    valve = PlainText.harmless(valve);
    words = PlainText.harmless(words);
  }
}
