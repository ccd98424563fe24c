package rillwright.cli.wording;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Finds the names that have most words of one that is not known. */
final class AlikeWords {
  private static final int MOST = 3;
  private static final int SHORTEST_TELLING = 3;

  private AlikeWords() {}

  /**
   * Known names in which at least half of the written name's words begin a word, one of three
   * letters or more among them: "elbow 90" for "90 degree elbow". Those with most such words, three
   * at most.
   */
  static List<String> in(String written, Collection<String> known) {
    List<String> words = wordsOf(written);
    int best = 0;
    List<String> alike = new ArrayList<>();
    for (String name : known) {
      int shared = shared(words, wordsOf(name));
      if (shared > best) {
        best = shared;
        alike.clear();
      }
      if (shared == best && alike.size() < MOST) {
        alike.add(name);
      }
    }
    return best > 0 && 2 * best >= words.size() ? alike : List.of();
  }

  private static List<String> wordsOf(String name) {
    return List.of(name.strip().toLowerCase(Locale.ROOT).split(" +"));
  }

  /** How many words begin one of a name; 0 if none of them tells anything. */
  private static int shared(List<String> words, List<String> own) {
    int shared = 0;
    boolean telling = false;
    for (String word : words) {
      if (own.stream().anyMatch(each -> !word.isEmpty() && each.startsWith(word))) {
        shared++;
        telling |= word.length() >= SHORTEST_TELLING;
      }
    }
    return telling ? shared : 0;
  }
}
