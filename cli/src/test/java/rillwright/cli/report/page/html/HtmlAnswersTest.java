package rillwright.cli.report.page.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.command.Run;
import rillwright.curves.wording.PlainText;

/**
 * Each command's HTML, read by an HTML parser: whatever a file is called and says stays text, and
 * what the terminal shows stands on the page.
 */
class HtmlAnswersTest {
  /** All that a page is made of; nothing here fetches or runs anything. */
  private static final Set<String> ELEMENTS =
      Set.of(
          "html", "head", "meta", "title", "style", "body", "main", "section", "h1", "h2", "p",
          "ul", "li", "span", "table", "caption", "thead", "tbody", "tr", "th", "td", "figure",
          "dl", "dt", "dd", "div", "strong");

  private static final Set<String> ATTRIBUTES =
      Set.of("lang", "charset", "http-equiv", "name", "content", "class", "scope", "data-label");

  private static final Set<String> DRAWN =
      Set.of(
          "svg",
          "title",
          "desc",
          "defs",
          "g",
          "rect",
          "path",
          "text",
          "line",
          "circle",
          "polygon",
          "polyline",
          "clippath");

  /** What may stand in a picture's attributes; an address of something else may not. */
  private static final List<String> FETCHING = List.of("on", "href", "xlink", "style", "src");

  private static final String DRAWING =
      "(pumps|pipes|odds|balance|weak(?! FILE --causes)|stream(?! FILE --conditions)) .*";

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check FILE",
        "solve FILE",
        "solve FILE --conditions",
        "duty FILE",
        "pumps FILE --from SHEETS",
        "pumps FILE --from SHEETS --conditions",
        "pipes FILE --line one --sizes 63_mm,2_in",
        "pipes FILE --line one --sizes 63_mm,2_in --from SHEETS --conditions",
        "odds FILE --samples 200",
        "odds FILE --samples 100 --conditions",
        "balance FILE",
        "weak FILE",
        "weak FILE --causes",
        "sheet FILE",
        "sheet FILE --for crew",
        "sheet FILE --for customer",
        "sheet FILE --for lid",
        "stream FILE --times",
        "stream FILE --conditions"
      })
  void whatAFileSaysIsTextAndAllOfItIsThere(String command) throws IOException {
    HostileProject project = HostileProject.in(folder);
    List<String> words = new ArrayList<>();
    for (String word : command.split(" ", -1)) {
      words.add(
          switch (word) {
            case "FILE" -> project.file();
            case "SHEETS" -> project.sheets();
            default -> word.replace('_', ' ');
          });
    }

    String text = answer(words);
    words.addAll(List.of("--format", "html"));
    String html = answer(words);

    Document page = Jsoup.parse(html);
    assertEquals(PlainText.harmless(HostileProject.TITLE), page.selectFirst("h1").text());
    assertInert(page);
    int drawn = command.matches(DRAWING) ? 1 : 0;
    int sheet = command.equals("sheet FILE") ? 2 : command.matches(".*(crew|customer)") ? 1 : drawn;
    assertEquals(sheet, page.select("figure > svg > desc").size());
    assertTellsAll(text, page);
  }

  @ParameterizedTest
  @ValueSource(strings = {"catalogue", "catalogue check valves"})
  void theCatalogueIsAPageToo(String command) {
    String text = answer(List.of(command.split(" ", -1)));
    Document page = Jsoup.parse(answer(List.of((command + " --format html").split(" ", -1))));

    assertInert(page);
    assertTellsAll(text, page);
  }

  private static String answer(List<String> words) {
    Run run = Run.of(words.toArray(String[]::new));
    assertEquals(0, run.status(), run.err());
    return run.out();
  }

  private static void assertInert(Document page) {
    for (Element element : page.getAllElements()) {
      boolean drawn = element.closest("svg") != null;
      if (element.parent() == null) {
        continue;
      }
      assertTrue((drawn ? DRAWN : ELEMENTS).contains(element.normalName()), element.outerHtml());
      for (Attribute attribute : element.attributes()) {
        String name = attribute.getKey();
        boolean harmless =
            drawn
                ? FETCHING.stream().noneMatch(name::startsWith)
                    && !attribute.getValue().contains("url(")
                : ATTRIBUTES.contains(name);
        assertTrue(harmless, () -> element.outerHtml());
      }
    }
    assertEquals(
        "default-src 'none'; style-src '"
            + hash(page.selectFirst("style").data())
            + "'; base-uri 'none'; form-action 'none'",
        page.select("meta[http-equiv=Content-Security-Policy]").attr("content"));
    assertTrue(!page.selectFirst("style").data().matches("(?s).*(url\\(|@import|</).*"));
  }

  /** What CSP level 3, section 2.3.1 takes as the name of a text. */
  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError(e);
    }
  }

  /** Each word of the text, as often as it stands there at least; one that is broken, in pieces. */
  private static void assertTellsAll(String text, Document page) {
    page.select("svg").remove();
    String all = page.body().text();
    List<String> shown = new ArrayList<>(List.of(all.split(" ", -1)));
    for (String word : text.strip().split("\\s+", -1)) {
      boolean ruled = word.matches("=+|_+");
      String name = word.replaceFirst(":$", "");
      assertTrue(ruled || shown.remove(word) || all.contains(name), () -> word + " of " + all);
    }
  }
}
