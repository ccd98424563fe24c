package rillwright.cli.report.weak;

import java.util.Locale;

/** A probability as it is shown. */
public final class Chance {
  private Chance() {}

  /** "55 %", "under 1 %". */
  public static String words(double probability) {
    if (probability < 0.005) {
      return "under 1 %";
    }
    return probability > 0.995
        ? "over 99 %"
        : String.format(Locale.ROOT, "%.0f %%", 100 * probability);
  }

  /** The same in a sentence: "about 55 %", "over 99 %". */
  public static String about(double probability) {
    boolean certain = probability < 0.005 || probability > 0.995;
    return (certain ? "" : "about ") + words(probability);
  }
}
