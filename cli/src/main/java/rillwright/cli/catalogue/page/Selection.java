package rillwright.cli.catalogue.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rillwright.cli.catalogue.Catalogue;

/**
 * What a user asked of the catalogue: the sections that hold it, each cut down to what was asked.
 */
public final class Selection {
  private final List<Section<?>> sections;

  private Selection(List<Section<?>> sections) {
    this.sections = List.copyOf(sections);
  }

  /** The sections; none is empty. */
  List<Section<?>> sections() {
    return sections;
  }

  /** The names of its sections. */
  public List<String> names() {
    return sections.stream().map(Section::name).toList();
  }

  /** The whole catalogue. */
  public static Selection all(Catalogue catalogue) {
    return new Selection(Sections.all(catalogue));
  }

  /**
   * What was asked in words: a section ({@code pipes}, {@code check valves}), a section and a name
   * in it, or a name in any section. A name in full is preferred to one that only has the words.
   *
   * @return empty if nothing is called so; {@link Suggestion} then says what may have been meant
   */
  public static Optional<Selection> find(String asked, Catalogue catalogue) {
    List<Section<?>> all = Sections.all(catalogue);
    String plain = plain(asked);
    Optional<Section<?>> section = all.stream().filter(each -> begins(plain, each)).findFirst();
    if (section.isEmpty()) {
      return findName(plain, all);
    }
    String name = afterName(plain, section.get());
    return name.isEmpty()
        ? Optional.of(new Selection(List.of(section.get())))
        : findName(name, List.of(section.get())).or(() -> findName(plain, all));
  }

  static boolean begins(String asked, Section<?> section) {
    return !afterName(asked, section).equals(asked);
  }

  /**
   * What follows a section's name, in the plural or singular; all of it if it does not begin so.
   */
  static String afterName(String asked, Section<?> section) {
    for (String name : List.of(section.name(), section.singular())) {
      if ((asked + " ").startsWith(name + " ")) {
        return asked.substring(name.length()).strip();
      }
    }
    return asked;
  }

  /** In small letters, one space between words, sizes as the trade writes them: 1-1/2 in. */
  static String plain(String asked) {
    return asked
        .strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\s+", " ")
        .replaceAll("(\\d) (\\d+/\\d)", "$1-$2")
        .replaceAll("(\\d)\\.50?(?= in\\b)", "$1-1/2")
        .replaceAll("(\\d)\\.25(?= in\\b)", "$1-1/4")
        .replaceAll("(\\d)\\.75(?= in\\b)", "$1-3/4")
        .replaceAll("\\b0-", "");
  }

  private static Optional<Selection> findName(String asked, List<Section<?>> all) {
    return named(asked, all)
        .or(
            () ->
                asked.endsWith("s")
                    ? named(asked.substring(0, asked.length() - 1), all)
                    : Optional.empty());
  }

  private static Optional<Selection> named(String asked, List<Section<?>> all) {
    return cut(all, section -> section.named(asked))
        .or(() -> cut(all, section -> section.mentioning(asked)));
  }

  private static Optional<Selection> cut(List<Section<?>> all, UnaryOperator<Section<?>> how) {
    List<Section<?>> kept =
        all.stream().<Section<?>>map(how).filter(section -> !section.isEmpty()).toList();
    return kept.isEmpty() ? Optional.empty() : Optional.of(new Selection(kept));
  }
}
