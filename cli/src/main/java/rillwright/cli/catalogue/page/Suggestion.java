package rillwright.cli.catalogue.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.Stream;
import rillwright.cli.catalogue.Catalogue;
import rillwright.curves.wording.Nearest;
import rillwright.curves.wording.PlainText;

/** What a user may have meant by a name that the catalogue lacks. */
public final class Suggestion {
  private static final int MOST = 3;
  private static final int SHORTEST_WORD = 3;

  private Suggestion() {}

  /** One sentence for a name that {@link Selection#find} does not know. */
  public static String sentence(String asked, Catalogue catalogue) {
    List<Section<?>> all = Sections.all(catalogue);
    String plain = Selection.plain(asked);
    Optional<Section<?>> section =
        all.stream().filter(each -> Selection.begins(plain, each)).findFirst();
    return section
        .map(each -> within(each, Selection.afterName(plain, each)))
        .orElseGet(() -> anywhere(plain, all));
  }

  private static String within(Section<?> section, String name) {
    List<String> nearest = nearest(name, section.allNames(), section.mainNames());
    return start(name, "among the " + section.name() + " ")
        + (nearest.isEmpty()
            ? "they are " + String.join(", ", section.mainNames())
            : question(nearest));
  }

  private static String anywhere(String name, List<Section<?>> all) {
    List<String> sections = all.stream().map(Section::name).toList();
    List<String> nearest =
        nearest(
            name,
            gather(sections, all, Section::allNames),
            gather(sections, all, Section::mainNames));
    return start(name, "")
        + (nearest.isEmpty()
            ? "its sections are " + String.join(", ", sections)
            : question(nearest));
  }

  private static String start(String name, String where) {
    return "the catalogue has nothing " + where + "called " + PlainText.quoted(name) + "; ";
  }

  private static String question(List<String> nearest) {
    return "did you mean " + String.join(", ", nearest) + "?";
  }

  private static List<String> gather(
      List<String> sections, List<Section<?>> all, Function<Section<?>, List<String>> names) {
    return Stream.concat(
            sections.stream(), all.stream().flatMap(each -> names.apply(each).stream()))
        .distinct()
        .toList();
  }

  private static List<String> nearest(String name, List<String> all, List<String> main) {
    List<String> whole = Nearest.to(name, all);
    if (!whole.isEmpty()) {
      return whole;
    }
    List<String> begun = withWord(name, main, Suggestion::begins);
    return begun.isEmpty() ? withWord(name, main, Suggestion::isLike) : begun;
  }

  /** Names one of whose words is as one of the words asked should be. */
  private static List<String> withWord(
      String asked, List<String> known, BiPredicate<String, String> alike) {
    List<String> words =
        Arrays.stream(asked.split(" ")).filter(word -> word.length() >= SHORTEST_WORD).toList();
    return known.stream()
        .filter(
            name ->
                Arrays.stream(name.split(" "))
                    .anyMatch(own -> words.stream().anyMatch(word -> alike.test(own, word))))
        .limit(MOST)
        .toList();
  }

  private static boolean begins(String own, String word) {
    return own.regionMatches(true, 0, word, 0, word.length());
  }

  private static boolean isLike(String own, String word) {
    return !Nearest.to(word, List.of(own)).isEmpty();
  }
}
