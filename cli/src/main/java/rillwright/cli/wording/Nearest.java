package rillwright.cli.wording;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the names most like one that is not known. */
public final class Nearest {
  private static final int MOST = 3;

  private Nearest() {}

  /**
   * Known names within a third of the written name's length in changed letters, nearest first,
   * three at most.
   *
   * @param written what the user wrote
   * @param known what would have been right
   */
  public static List<String> to(String written, Collection<String> known) {
    String lower = written.toLowerCase(Locale.ROOT);
    int allowed = Math.max(2, lower.length() / 3);
    LevenshteinDistance distance = new LevenshteinDistance(allowed);
    record Candidate(String name, int distance) {}
    return known.stream()
        .distinct()
        .map(name -> new Candidate(name, distance.apply(lower, name.toLowerCase(Locale.ROOT))))
        .filter(candidate -> candidate.distance() >= 0)
        .sorted(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name))
        .limit(MOST)
        .map(Candidate::name)
        .toList();
  }
}
