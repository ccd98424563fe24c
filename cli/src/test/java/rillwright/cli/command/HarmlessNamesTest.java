package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What stands in a file is text and nothing else, in every report. */
class HarmlessNamesTest {
  private static final String TITLE = "<script>alert(1)</script>\n\u001b[31mred\u001b[0m \u202erev";
  private static final String NAME = "bad\u001b]0;owned\u0007 fall\r\nFALLS none";

  @TempDir private Path folder;
  private String file;

  @BeforeEach
  void writeTheProject() throws IOException {
    ObjectMapper json = new ObjectMapper();
    String text =
        """
        {"rillwright": 1, "title": %s, "show": "metric",
         "points": {
           "pond": {"kind": "basin", "level": "0 m"},
           %s: {"kind": "fall", "crest": "1 m", "width": "50 cm", "lip": "metal", "target": "50 m3/h"}},
         "lines": {%s: {"from": "pond", "to": %s,
           "pipe": {"inside": "50 mm", "roughness": "0.01 mm"},
           "parts": [{"pump": "p"}, {"gauge": {"name": %s, "elevation": "0 m"}}, {"run": "10 m"}]}},
         "pumps": {"p": {"points": [
           {"flow": "0 m3/h", "head": "5 m"}, {"flow": "12 m3/h", "head": "0.5 m"}]}}}
        """
            .formatted(
                json.writeValueAsString(TITLE),
                json.writeValueAsString(NAME),
                json.writeValueAsString(NAME),
                json.writeValueAsString(NAME),
                json.writeValueAsString(NAME));
    Path path = folder.resolve("pond.json");
    Files.writeString(path, text);
    file = path.toString();
  }

  @Test
  void textHasNoCharacterThatCouldMoveAnything() {
    for (String command : new String[] {"solve", "check"}) {
      Run run = Run.of(command, file);
      assertEquals(0, run.status(), run.err());
      assertTrue(
          run.out().chars().allMatch(c -> c == '\n' || !Character.isISOControl(c)), run.out());
      assertFalse(run.out().contains("\u202e"), run.out());
      assertTrue(run.out().startsWith("<script>alert(1)</script>\\u000a\\u001b[31mred"), run.out());
      assertFalse(run.out().contains("\nFALLS none"), "a name starts no line of its own");
      assertTrue(
          run.out().lines().allMatch(line -> line.codePointCount(0, line.length()) <= 100),
          run.out());
    }
  }

  @Test
  void jsonKeepsTheTextAndEscapesIt() {
    Run run = Run.of("solve", file, "--format", "json");
    assertEquals(-1, run.out().indexOf('\u001b'));
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertEquals(TITLE, json.get("title").asString());
    assertTrue(json.get("points").has(NAME));
    assertEquals(NAME, json.get("lines").get(NAME).get("parts").get(2).get("name").asString());
  }
}
