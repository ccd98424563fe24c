package rillwright.curves.wording;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the names most like one that is not known. */
public final class Nearest {
  private static final int MOST = 3;

  /** Nobody mistypes a longer name, and to compare it with all others takes minutes. */
  private static final int LONGEST = 200;

  private Nearest() {}

  /**
   * Known names that a few changed letters lead to: two, or a third of the written name if that is
   * more, but fewer than the known name has. Nearest first, three at most; none for a name of more
   * than 200 characters.
   *
   * @param written what the user wrote
   * @param known what would have been right
   */
  public static List<String> to(String written, Collection<String> known) {
    if (written.length() > LONGEST) {
      return List.of();
    }
    String lower = written.toLowerCase(Locale.ROOT);
    int allowed = Math.max(2, lower.length() / 3);
    LevenshteinDistance distance = new LevenshteinDistance(allowed);
    record Candidate(String name, int distance) {}
    return known.stream()
        .distinct()
        .filter(name -> Math.abs(name.length() - lower.length()) <= allowed)
        .map(name -> new Candidate(name, distance.apply(lower, name.toLowerCase(Locale.ROOT))))
        .filter(found -> found.distance() >= 0 && found.distance() < found.name().length())
        .sorted(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name))
        .limit(MOST)
        .map(Candidate::name)
        .toList();
  }
}
