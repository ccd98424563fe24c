package rillwright.curves.wording;

import java.util.List;

/** Several things in a sentence. */
public final class Listing {
  private Listing() {}

  /** {@code a}, {@code a and b} or {@code a, b and c}; of at least one. */
  public static String of(List<String> words) {
    return joined(words, " and ");
  }

  /** {@code gph, gpm or L/h}; of at least one. */
  public static String either(List<String> words) {
    return joined(words, " or ");
  }

  private static String joined(List<String> words, String beforeLast) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + beforeLast + words.get(last);
  }
}
