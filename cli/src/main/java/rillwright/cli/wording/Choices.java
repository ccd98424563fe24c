package rillwright.cli.wording;

import java.util.Collection;
import java.util.List;
import rillwright.curves.wording.Nearest;

/** Tells what would have been right. */
public final class Choices {
  private static final int MOST = 12;
  private static final String CUT = " \u2026";
  private static final int MOST_NEAR = 3;

  private Choices() {}

  /** "ft, in, m"; a long list is cut short. */
  public static String listed(Collection<String> choices) {
    if (choices.size() <= MOST) {
      return String.join(", ", choices);
    }
    return String.join(", ", choices.stream().limit(MOST).toList()) + CUT;
  }

  /**
   * What to say after a word that is not known: {@code did you mean "ball"?}, of near names or else
   * of those that begin with it or have its words; without any {@code it may be ball, gate};
   * nothing if nothing is known at all.
   *
   * @param written what the user wrote
   * @param known what would have been right
   */
  public static String hint(String written, Collection<String> known) {
    List<String> near = Nearest.to(written, known);
    if (near.isEmpty() && !written.isEmpty()) {
      near = known.stream().filter(name -> name.startsWith(written)).limit(MOST_NEAR).toList();
    }
    if (near.isEmpty()) {
      near = AlikeWords.in(written, known);
    }
    if (!near.isEmpty()) {
      return "; did you mean \"" + String.join("\" or \"", near) + "\"?";
    }
    return known.isEmpty() ? "" : "; it may be " + listed(known);
  }

  /**
   * As {@link #hint(String, Collection)}, of names in a section of the catalogue: where the list is
   * cut short, it is said which command tells all.
   *
   * @param section as the command {@code catalogue} calls it
   */
  public static String hint(String written, Collection<String> known, String section) {
    String hint = hint(written, known);
    return hint.endsWith(CUT)
        ? hint + "; \"rillwright catalogue " + section + "\" tells all"
        : hint;
  }
}
