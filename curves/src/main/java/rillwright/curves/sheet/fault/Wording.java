package rillwright.curves.sheet.fault;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Turns of phrase that the messages share. */
public final class Wording {
  private static final int LONGEST_QUOTE = 40;

  private Wording() {}

  /** What the user wrote, in quotes: shortened, and without characters that do not show. */
  public static String quoted(String written) {
    StringBuilder shown = new StringBuilder("\"");
    int[] codes = written.codePoints().toArray();
    for (int i = 0; i < Math.min(codes.length, LONGEST_QUOTE); i++) {
      shown.appendCodePoint(isVisible(codes[i]) ? codes[i] : '\u00b7');
    }
    return shown.append(codes.length > LONGEST_QUOTE ? "\u2026\"" : "\"").toString();
  }

  private static boolean isVisible(int code) {
    return switch (Character.getType(code)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }

  /** "gph, gpm or L/h". */
  public static String either(List<String> choices) {
    int last = choices.size() - 1;
    return last <= 0
        ? String.join("", choices)
        : String.join(", ", choices.subList(0, last)) + " or " + choices.get(last);
  }

  /** The right word that is most like a wrong one, if one is within two changed letters of it. */
  public static Optional<String> nearest(String written, Collection<String> right) {
    String lower = written.toLowerCase(Locale.ROOT);
    LevenshteinDistance distance = new LevenshteinDistance(2);
    record Candidate(String word, int distance) {}
    return right.stream()
        .map(word -> new Candidate(word, distance.apply(lower, word.toLowerCase(Locale.ROOT))))
        .filter(found -> found.distance() >= 0 && found.distance() < found.word().length())
        .min(Comparator.comparingInt(Candidate::distance))
        .map(Candidate::word);
  }

  /** "; did you mean "gph"?", or nothing. */
  public static String didYouMean(String written, Collection<String> right) {
    return nearest(written, right).map(word -> "; did you mean \"" + word + "\"?").orElse("");
  }
}
