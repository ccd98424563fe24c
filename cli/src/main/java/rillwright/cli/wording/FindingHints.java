package rillwright.cli.wording;

import java.util.Map;

/**
 * What this program has to add to findings, which know neither its commands nor its files: a
 * sentence for a code.
 */
public final class FindingHints {
  private static final Map<String, String> BY_CODE =
      Map.of(
          "area-not-known", "Write for example \"area: 200 ft2\".",
          "basin-not-in-balance", "Give it as a fall's \"returns to\" or a stream's \"to\".",
          "cannot-start", "If somebody will, write \"primed: yes\" at the high point.",
          "ends-exchanged", "Swap \"from\" and \"to\" of that line.",
          "no-evaporation", "Write for example \"water: {temperature: 75 F}\".",
          "stream-dry", "\"rillwright solve\" tells why.",
          "water-temperature-assumed", "Write for example \"water: {temperature: 80 F}\".");

  private FindingHints() {}

  /** The sentence for a code, led by a space; empty if there is none. */
  public static String of(String code) {
    String hint = BY_CODE.get(code);
    return hint == null ? "" : " " + hint;
  }
}
