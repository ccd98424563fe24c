package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

  private static final Set<String> TEXTS = Set.of("title", "name");

  @TempDir private Path folder;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 4, 8})
  void areTextAndNothingElse(long seed) throws IOException {
    Map<String, Object> tree = hostile(RandomProject.of(seed));
    Path file = Files.writeString(folder.resolve("pond.json"), ProjectTree.json(tree));
    Path sheets = Files.createDirectory(folder.resolve("sheets"));
    Files.writeString(
        sheets.resolve("a \u001b[31m\u202e.csv"),
        "# maker: x\u001b[31m\u202e\nflow [m3/h],head [m],\u001b[31m\n0,5,1\n8,4,2\n12,0,3\n");
    Run check = Run.of("check", file.toString());
    assertEquals(0, check.status(), check.err());
    String line = ProjectTree.linesWith("run", tree).get(0);
    Set<Integer> statuses = new TreeSet<>();
    for (List<String> command : new EveryCommand(file.toString(), line, sheets.toString()).list()) {
      Run run = OrderlyRun.of(folder, command);
      statuses.add(run.status());
      assertHarmless(run.out(), command);
      removePictures(command);
    }
    assertTrue(statuses.contains(0), statuses::toString);
  }

  private void removePictures(List<String> command) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path picture : files.filter(OrderlyRun::isPicture).toList()) {
        assertHarmless(Files.readString(picture), command);
        Files.delete(picture);
      }
    }
  }

  private static void assertHarmless(String text, List<String> command) {
    for (String line : text.split("\n", -1)) {
      assertEquals(PlainText.harmless(line), line, command::toString);
    }
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
