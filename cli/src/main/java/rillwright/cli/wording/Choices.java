package rillwright.cli.wording;

import java.util.Collection;
import java.util.List;

/** Tells what would have been right. */
public final class Choices {
  private static final int MOST = 12;

  private Choices() {}

  /** "ft, in, m"; a long list is cut short. */
  public static String listed(Collection<String> choices) {
    if (choices.size() <= MOST) {
      return String.join(", ", choices);
    }
    return String.join(", ", choices.stream().limit(MOST).toList()) + " \u2026";
  }

  /**
   * What to say after a word that is not known: {@code did you mean "ball"?}, or without a near
   * name {@code it may be ball, gate}, or nothing if there is none at all.
   *
   * @param written what the user wrote
   * @param known what would have been right
   */
  public static String hint(String written, Collection<String> known) {
    List<String> near = Nearest.to(written, known);
    if (!near.isEmpty()) {
      return "; did you mean \"" + String.join("\" or \"", near) + "\"?";
    }
    return known.isEmpty() ? "" : "; it may be " + listed(known);
  }
}
