package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** With {@code --to} an answer is written whole or not at all, and never over what was read. */
class DestinationTest {
  private static final String SHEET = "flow [gph],head [ft]\n0,20\n3000,0\n";

  @TempDir private Path folder;
  private String project;
  private String supplier;

  @BeforeEach
  void writeInputs() throws IOException {
    Files.writeString(folder.resolve("mine.csv"), SHEET);
    supplier = Files.createDirectory(folder.resolve("supplier")).toString();
    Files.writeString(folder.resolve("supplier/a.csv"), SHEET);
    Files.writeString(folder.resolve("today.yaml"), "signs: [sudden]\n");
    project =
        Files.writeString(
                folder.resolve("pond.yaml"),
                """
                points:
                  pond: {kind: basin, level: 0 ft, area: 100 ft2}
                  top: {kind: fall, crest: 3 ft, width: 12 in, target: 900 gph}
                lines:
                  up:
                    from: pond
                    to: top
                    pipe: {inside: 2 in, roughness: 0.01 mm}
                    parts: [pump: mine, run: 20 ft]
                pumps: {mine: mine.csv}
                """)
            .toString();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "solve FILE",
        "solve FILE --format json",
        "solve FILE --format html",
        "duty FILE",
        "pumps FILE --from SHEETS --format html",
        "catalogue beds --format csv",
        "catalogue lips",
        "weak FILE --causes --format html"
      })
  void theFileHoldsWhatWouldHaveBeenPrinted(String command) throws IOException {
    List<String> words = words(command);
    Run printed = run(words);
    Path file = folder.resolve("an answer");
    Files.writeString(file, "an older one");

    words.addAll(List.of("--to", file.toString()));
    Run written = run(words);

    assertEquals(0, written.status(), written.err());
    assertEquals("Written: " + file, written.out().strip());
    assertEquals(printed.out(), Files.readString(file));
  }

  @ParameterizedTest
  @CsvSource({"html,html", "json,json", "txt,text", "answer,text"})
  void aFilesEndingSaysInWhichForm(String ending, String format) throws IOException {
    Path file = folder.resolve("my." + ending);

    assertEquals(0, run(List.of("solve", project, "--to", file.toString())).status());

    Run printed = run(List.of("solve", project, "--format", format));
    assertEquals(printed.out(), Files.readString(file));
  }

  @Test
  void colorMayBeAskedForBeforeTheCommandToo() {
    String plain = run(List.of("solve", project)).out();
    String before = run(List.of("--color", "always", "solve", project)).out();

    assertTrue(before.contains("\u001b["), before);
    assertEquals(before, run(List.of("solve", project, "--color", "always")).out());
    assertEquals(
        plain, run(List.of("--color", "always", "solve", project, "--color", "never")).out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check FILE --to pond.yaml",
        "solve FILE --to mine.csv --format html",
        "duty FILE --to a_link",
        "pumps FILE --from SHEETS --to supplier/a.csv",
        "weak FILE --readings TODAY --to today.yaml",
        "weak-trial FILE --calls 1 --to pond.yaml",
        "solve FILE --to supplier",
        "solve FILE --to nowhere/answer.txt",
        "catalogue --to nowhere/answer.txt",
        "stream FILE --chart b.svg --to b.svg",
        "solve FILE --to answer.txt --format pdf"
      })
  void whatMustNotBeWrittenIsRefusedAndNothingChanges(String command) throws IOException {
    Files.createSymbolicLink(folder.resolve("a link"), folder.resolve("mine.csv"));
    Map<String, String> before = files();

    Run run = run(words(command));

    assertEquals(2, run.status(), run.out());
    assertEquals("", run.out());
    assertFalse(run.err().isEmpty());
    assertEquals(before, files());
  }

  @Test
  void aLongNameIsWritten() throws IOException {
    Path file = folder.resolve("n".repeat(250));
    assertEquals(0, run(words("solve FILE --to " + file)).status());
    assertFalse(Files.readString(file).isEmpty());
  }

  @Test
  void whereALinkLeadsIsWrittenAndTheLinkStays() throws IOException {
    Path last = Files.writeString(folder.resolve("last.txt"), "older");
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), last);

    assertEquals(0, run(words("check FILE --to " + link)).status());

    assertTrue(Files.isSymbolicLink(link));
    assertEquals(run(words("check FILE")).out(), Files.readString(last));
  }

  private static Run run(List<String> words) {
    return Run.of(words.toArray(String[]::new));
  }

  private List<String> words(String command) {
    List<String> words = new ArrayList<>();
    for (String word : command.split(" ", -1)) {
      boolean output = !words.isEmpty() && List.of("--to", "--chart").contains(last(words));
      words.add(
          switch (word) {
            case "FILE" -> project;
            case "SHEETS" -> supplier;
            case "TODAY" -> folder.resolve("today.yaml").toString();
            default ->
                output ? folder.resolve(word.replace('_', ' ')).toString() : word.replace('_', ' ');
          });
    }
    return words;
  }

  private static String last(List<String> words) {
    return words.get(words.size() - 1);
  }

  private Map<String, String> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      Map<String, String> files = new TreeMap<>();
      for (Path file : all.toList()) {
        files.put(file.toString(), Files.isRegularFile(file) ? Files.readString(file) : "");
      }
      return files;
    }
  }
}
