package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.command.Run;
import rillwright.curves.wording.PlainText;

/**
 * No writer lets through what a file's names hold: control characters, marks that turn the
 * direction of writing, ends of lines. Every command in every format, its pictures too.
 */
class HostileNamesTest {
  private static final String HOSTILE =
      "\u001b[31m\u001b]0;x\u0007 \u202e \u2066 \u200f \u2028 \u0085 \r\n"
          + "FALLS \u0000<b>&\"'\\ \uFEFF";

  /** Names that the reader takes as names, and texts of the file. */
  private static final Set<String> NAMING =
      Set.of("points", "lines", "pumps", "streams", "conditions");

  private static final Set<String> TEXTS =
      Set.of("title", "name", "note", "firm", "customer", "address");

  @TempDir private Path folder;
  private String ended = "";

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 4, 8})
  void areTextAndNothingElse(long seed) throws IOException {
    Map<String, Object> tree = hostile(withAJob(RandomProject.of(seed)));
    Path file = folder.resolve("pond \u001b[31m\u202e.json");
    Files.writeString(file, ProjectTree.json(tree));
    Path sheets = sheet().getParent();
    Run check = Run.of("check", file.toString());
    assertEquals(0, check.status(), check.err());
    String line = ProjectTree.linesWith("run", tree).get(0);
    Set<Integer> statuses = new TreeSet<>();
    for (List<String> command : new EveryCommand(file.toString(), line, sheets.toString()).list()) {
      statuses.add(run(command, file));
    }
    assertTrue(statuses.contains(0), statuses::toString);
  }

  @Test
  void inASheetAreText() throws IOException {
    Path sheet = sheet();
    for (List<String> command : OtherCommand.ofSheet(sheet)) {
      assertEquals(0, run(command, sheet), () -> command + ended);
    }
  }

  @Test
  void inAnswersAndReadingsAreText() throws IOException {
    String text = ProjectTree.json(Map.of("title", "x" + HOSTILE));
    Path answers = Files.writeString(folder.resolve("answers.json"), text);
    for (List<String> command : OtherCommand.ofAnswers(answers)) {
      assertEquals(2, run(command, answers), command::toString);
    }
    Map<String, Object> reading = Map.of("at", "x" + HOSTILE, "flow", "2 m3/h" + HOSTILE);
    Path readings =
        Files.writeString(
            folder.resolve("readings.yaml"),
            ProjectTree.json(Map.of("readings", List.of(reading))));
    String project = Path.of("..", "examples", "weak-fall", "fall.yaml").toString();
    for (List<String> command : OtherCommand.ofReadings(project, readings)) {
      assertEquals(2, run(command, readings), command::toString);
    }
  }

  /** What stands on the command line is shown by those who refuse it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "help X",
        "catalogue X",
        "X",
        "solve X",
        "solve FILE X",
        "solve FILE --set points.X.level=1_m",
        "solve FILE --set points.pond.level=X",
        "solve FILE --condition X",
        "solve FILE --format X",
        "solve FILE --to X/X",
        "solve FILE --sheets X",
        "solve FILE --X",
        "pipes FILE --line X --sizes 1",
        "pipes FILE --line up --sizes X",
        "pumps FILE --from X",
        "chart FILE --pump X",
        "balance FILE --valves X",
        "sheet FILE --for X",
        "weak FILE --readings X",
        "compare FILE X",
        "pump X",
        "new X",
        "new pond.yaml --answers X"
      })
  void onTheCommandLineAreText(String words) {
    String file = Path.of("..", "examples", "twin-falls", "falls.yaml").toString();
    String hostile = HOSTILE.replace("\0", "");
    List<String> command =
        Stream.of(words.split(" ", -1))
            .map(word -> word.replace("FILE", file).replace("X", hostile).replace("_", " "))
            .toList();
    assertEquals(2, OrderlyRun.of(folder, command).status());
  }

  private Path sheet() throws IOException {
    return Files.writeString(
        Files.createDirectories(folder.resolve("sheets")).resolve("a \u001b[31m\u202e.csv"),
        """
        # maker: x\u202e\u2066\u200f\uFEFF<b>&
        flow [m3/h],head [m],\u202e
        0,5,1
        8,4,2
        12,0,3
        """);
  }

  private int run(List<String> command, Path file) {
    OrderlyRun.clear(file, text -> {});
    Run run = OrderlyRun.of(folder, command);
    assertHarmless(run.out(), command);
    OrderlyRun.clear(
        file,
        text -> {
          if (!command.contains("asbuilt")) { // it writes the user's own file again
            assertHarmless(text, command);
          }
        });
    ended = run.err();
    return run.status();
  }

  private static void assertHarmless(String text, List<String> command) {
    for (String line : text.split("\n", -1)) {
      assertEquals(PlainText.harmless(line), line, command::toString);
    }
    boolean isMarkup = text.startsWith("<!doctype") || text.startsWith("<?xml");
    assertFalse(isMarkup && text.contains("<b>&"), command::toString);
  }

  /** With notes, and for whom it is. */
  @SuppressWarnings("unchecked")
  private static Map<String, Object> withAJob(Map<String, Object> tree) {
    tree.put("job", ProjectTree.map("firm", "a", "customer", "b", "address", "c"));
    for (String section : List.of("points", "lines")) {
      ((Map<String, Map<String, Object>>) tree.get(section))
          .forEach((name, item) -> item.put("note", "noted"));
    }
    return tree;
  }

  /** The project with something hostile in every name and text. */
  private static Map<String, Object> hostile(Map<String, Object> tree) {
    List<String> names = new ArrayList<>();
    NAMING.forEach(
        section -> {
          if (tree.get(section) instanceof Map<?, ?> map) {
            map.keySet().forEach(name -> names.add((String) name));
          }
        });
    return renamed(tree, names, false);
  }

  private static Map<String, Object> renamed(Map<?, ?> map, List<String> names, boolean isSection) {
    Map<String, Object> renamed = new LinkedHashMap<>();
    map.forEach(
        (key, value) -> {
          String name = (String) key;
          boolean text = TEXTS.contains(name) && !isSection;
          renamed.put(
              isSection && names.contains(name) ? name + HOSTILE : name,
              text
                  ? value + HOSTILE
                  : name.equals("kind")
                      ? value
                      : renamedValue(value, names, NAMING.contains(name)));
        });
    return renamed;
  }

  private static Object renamedValue(Object value, List<String> names, boolean isSection) {
    if (value instanceof Map<?, ?> map) {
      return renamed(map, names, isSection);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(item -> renamedValue(item, names, false)).toList();
    }
    return value instanceof String text && names.contains(text) ? text + HOSTILE : value;
  }
}
