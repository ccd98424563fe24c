package rillwright.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.page.panel.form.PageWords;
import rillwright.cli.page.web.Asked;

/** What the studies' panels say: nothing there sends one to a terminal. */
class PanelWordsTest {
  private static final Pattern OF_TERMINAL =
      Pattern.compile("--[a-z]|&quot;rillwright [a-z]|\\bseed \\d|\\b(points|lines)\\.\\w");

  @TempDir private Path folder;

  static List<Path> examples() {
    return EditedByPageTest.examples();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void noPanelOfAnExampleNamesCommandsOrOptions(Path example) throws IOException {
    try (OpenPage page =
        OpenPage.ofExample(Path.of("../examples").relativize(example).toString(), folder)) {
      PageAnswers answers = PageAnswers.open(page.file(), page.defects()::add);
      String whole = answers.apply(asked(Asked.Method.GET, "", Map.of())).text();
      assertNothingOfTheTerminal("page", whole);
      List<String> panels = panels(whole);
      assertTrue(panels.contains("asbuilt") && panels.size() >= 14, panels.toString());
      for (String panel : panels) {
        for (Map<String, String> more :
            List.of(Map.of("samples", "100"), Map.of("samples", "100", "conditions", "yes"))) {
          if (more.size() == 1
              || (inConditions(example) && whole.contains("panel-" + panel + "-conditions"))) {
            Map<String, String> fields = new LinkedHashMap<>(more);
            fields.put("panel", panel);
            fields.put("line", line(whole));
            assertNothingOfTheTerminal(panel + " " + more, answer(answers, fields));
          }
        }
      }
      assertEquals(List.of(), page.defects());
    }
  }

  @Test
  void readingsOfTheJobAreListedInWords() throws IOException {
    try (OpenPage page = OpenPage.ofExample("weak-fall/fall.yaml", folder)) {
      PageAnswers answers = PageAnswers.open(page.file(), page.defects()::add);
      String whole = answers.apply(asked(Asked.Method.GET, "", Map.of())).text();
      assertTrue(whole.contains(">Flow at &quot;fall&quot;: 2,310 gph<"), whole);
      assertTrue(whole.contains(">for weeks<"), whole);
    }
  }

  @Test
  void commandsInMessagesBecomePanels() {
    assertEquals(
        "used only by \"Pipe sizes\", \"Mend it\" and \"Job sheet\"",
        PageWords.here("used only by \"rillwright pipes\", \"mend\" and \"sheet\""));
    assertEquals("\"Set the valves\" aims", PageWords.here("\"rillwright balance --target\" aims"));
    assertEquals(
        "&quot;Catalogue&quot; lists all",
        PageWords.here("&quot;rillwright catalogue lips&quot; lists all"));
    assertEquals(
        "<th>low: valve open</th><td>low fall: crest 60 %</td><p>Look at low: valve open first:</p>",
        PageWords.here(
            "<th>lines.low.valve.open</th><td>points.low fall.crest 60 %</td>"
                + "<p>Look at lines.low.valve.open first:</p>"));
    assertEquals("a point \"mend\"", PageWords.here("a point \"mend\""));
  }

  /**
   * In the build some of them are tried in conditions, with {@code -Drillwright.panels=true} all.
   */
  private static boolean inConditions(Path example) {
    return Boolean.getBoolean("rillwright.panels")
        || List.of("pond.yaml", "troughs.yaml").contains(example.getFileName().toString());
  }

  private static Asked asked(Asked.Method method, String path, Map<String, String> fields) {
    return new Asked(method, path, fields);
  }

  private static List<String> panels(String page) {
    return Pattern.compile("data-panel=\"([a-z]+)\"")
        .matcher(page)
        .results()
        .map(it -> it.group(1))
        .toList();
  }

  /** The first line that has a pipe. */
  private static String line(String page) {
    return Pattern.compile("id=\"panel-pipes-line\"[^>]*><option>([^<]*)<")
        .matcher(page)
        .results()
        .map(it -> it.group(1))
        .findFirst()
        .orElse("");
  }

  private static String answer(PageAnswers answers, Map<String, String> fields) {
    String answer = answers.apply(asked(Asked.Method.POST, "ask", fields)).text();
    while (answer.contains("data-working")) {
      Map<String, String> panel = Map.of("panel", fields.get("panel"));
      answer = answers.apply(asked(Asked.Method.GET, "work", panel)).text();
    }
    return answer;
  }

  private static void assertNothingOfTheTerminal(String what, String html) {
    String text = html.replaceAll("(?s)<style.*?</style>|<[^>]*>", " ").replaceAll("\\s+", " ");
    assertFalse(text.isBlank(), what);
    List<String> found = new ArrayList<>();
    OF_TERMINAL
        .matcher(text)
        .results()
        .map(MatchResult::start)
        .forEach(
            it ->
                found.add(text.substring(Math.max(0, it - 80), Math.min(text.length(), it + 40))));
    assertEquals(List.of(), found, what);
  }
}
