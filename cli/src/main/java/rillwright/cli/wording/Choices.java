package rillwright.cli.wording;

import java.util.Collection;
import java.util.List;
import rillwright.curves.wording.Nearest;
import rillwright.curves.wording.PlainText;

/** What would have been right. */
public final class Choices {
  private static final int MOST = 12;
  private static final String CUT = " \u2026";
  private static final int MOST_NEAR = 3;
  private static final int LONGEST_SEARCHED = 200;
  private static final int LONGEST_SHOWN = 60;

  private Choices() {}

  /** "ft, in, m"; a long list is cut short. */
  public static String listed(Collection<String> choices) {
    List<String> first = choices.stream().limit(MOST).map(Choices::shortened).toList();
    return String.join(", ", first) + (choices.size() <= MOST ? "" : CUT);
  }

  private static String shortened(String name) {
    return name.length() <= LONGEST_SHOWN ? name : name.substring(0, LONGEST_SHOWN) + "\u2026";
  }

  /**
   * What to say after a word that is not known: {@code did you mean "ball"?}, of near names or else
   * of those that begin with it or have its words; without any {@code it may be ball, gate};
   * nothing if nothing is known at all.
   *
   * @param written what the user wrote
   * @param allKnown what would have been right
   */
  public static String hint(String written, Collection<String> allKnown) {
    List<String> known = allKnown.stream().filter(name -> !name.isBlank()).toList();
    List<String> near = meant(written, known);
    if (!near.isEmpty()) {
      return "; did you mean "
          + String.join(" or ", near.stream().map(PlainText::quoted).toList())
          + "?";
    }
    return known.isEmpty() ? "" : "; choose " + listed(known);
  }

  /**
   * Names that may have been meant by a word that is not known: by what the trade calls them, by
   * their letters, their beginning or their words, in this order; none if nothing is like it.
   */
  public static List<String> meant(String written, Collection<String> known) {
    if (written.isBlank() || written.length() > LONGEST_SEARCHED) {
      return List.of();
    }
    List<String> near = TradeNames.meant(written, known);
    if (near.isEmpty()) {
      near = Nearest.to(written, known);
    }
    if (near.isEmpty()) {
      near = known.stream().filter(name -> name.startsWith(written)).limit(MOST_NEAR).toList();
    }
    return near.isEmpty() ? AlikeWords.in(written, known) : near;
  }

  /**
   * As {@link #hint(String, Collection)}, of sizes: {@code the nearest are 1-1/2 in and 2 in}.
   *
   * @param around the nearest smaller and the nearest larger one, as far as there are any
   */
  public static String hint(String written, Collection<String> known, List<String> around) {
    return switch (around.size()) {
      case 0 -> hint(written, known);
      case 1 -> "; the nearest is " + around.get(0);
      default -> "; the nearest are " + String.join(" and ", around);
    };
  }

  /**
   * As {@link #hint(String, Collection)}, of names in a section of the catalogue: where not all are
   * listed, they follow or, if they are many, the command that lists them.
   *
   * @param section as the command {@code catalogue} calls it
   */
  public static String hint(String written, Collection<String> known, String section) {
    String hint = hint(written, known);
    String all =
        known.size() <= MOST ? listed(known) : "\"rillwright catalogue " + section + "\" lists all";
    return hint.endsWith(CUT)
        ? hint + "; " + all
        : hint.endsWith("?") ? hint + " (" + all + ")" : hint;
  }
}
