package rillwright.cli.wording;

import java.util.List;

/** Several things in a sentence. */
public final class Listing {
  private Listing() {}

  /** {@code a}, {@code a and b} or {@code a, b and c}; of at least one. */
  public static String of(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
