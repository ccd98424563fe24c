package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Run;

/** What lies around a project: strange files beside it, strange names, files of the user's. */
class SurroundingsTest {
  private static final String SHEET = "flow [gph],head [ft]\n0,20\n3000,0\n";
  private static final String POINTS =
      """
      points:
        pond: {kind: basin, level: 0 ft, area: 100 ft2}
        top: {kind: fall, crest: 3 ft, width: 12 in, target: 900 gph}
      """;
  private static final String REST =
      """
      lines:
        up:
          from: pond
          to: top
          pipe: {inside: 2 in, roughness: 0.01 mm}
          parts: [pump: mine, run: 20 ft]
      """;

  @TempDir private Path outside;
  private Path folder;

  @BeforeEach
  void makeAFolderOfTheProjectsOwn() throws IOException {
    folder = Files.createDirectory(outside.resolve("project"));
    Files.writeString(outside.resolve("secret.csv"), "user,word\nroot,hunter2\n");
    Files.writeString(folder.resolve("mine.csv"), SHEET);
  }

  private String project(String sheet) throws IOException {
    String pumps = "pumps: {mine: " + sheet + "}\n";
    return Files.writeString(folder.resolve("pond.yaml"), POINTS + REST + pumps).toString();
  }

  private static void refused(Run run, String words) {
    assertEquals(2, run.status(), run.out());
    assertEquals("", run.out());
    assertTrue(run.err().contains(words), run.err());
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeIsNoDataSheetAndHoldsNothingUp() throws IOException, InterruptedException {
    Path supplier = Files.createDirectory(folder.resolve("supplier"));
    Files.writeString(supplier.resolve("a.csv"), SHEET);
    Path pipe = supplier.resolve("b.csv");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    assertTimeoutPreemptively(
        Duration.ofSeconds(30),
        () -> {
          String file = project("mine.csv");
          Run pumps = Run.of("pumps", file, "--from", supplier.toString(), "--format", "json");
          assertEquals(0, pumps.status(), pumps.err());
          refused(Run.of("check", project("supplier/b.csv")), "this is a device or a pipe");
          refused(Run.of("check", project("supplier")), "this is a folder");
        });
  }

  @Test
  void aSheetOutsideTheProjectsFolderIsNeitherReadNorQuoted() throws IOException {
    String outsideIt = "this lies outside the project's folder; put it there";
    Files.createSymbolicLink(folder.resolve("link.csv"), outside.resolve("secret.csv"));
    for (String sheet :
        List.of(
            "../secret.csv",
            "../project/../secret.csv",
            outside.resolve("secret.csv").toString(),
            "../no such file.csv",
            "link.csv")) {
      Run run = Run.of("check", project(sheet));
      refused(run, outsideIt);
      assertTrue(!run.err().contains("hunter2") && !run.err().contains("user"), run.err());
    }
  }

  @Test
  void aFolderOutsideIsAllowedByAnOption() throws IOException {
    Path library = Files.createDirectory(outside.resolve("library"));
    Files.writeString(library.resolve("a.csv"), SHEET);
    String file = project("../library/a.csv");
    assertEquals(2, Run.of("solve", file).status());
    Run run = Run.of("solve", file, "--sheets", library.toString());
    assertEquals(0, run.status(), run.err());
    refused(Run.of("solve", file, "--sheets", library + "/none"), "there is no such folder");
    refused(Run.of("solve", file, "--sheets", library + "/a.csv"), "name the folder that holds");
  }

  @Test
  void aSheetsNameMayBeginWithASpace() throws IOException {
    Files.writeString(folder.resolve(" spaced.csv"), SHEET);
    assertEquals(0, Run.of("check", project("' spaced.csv'")).status());
    Run pumps = Run.of("pumps", project("mine.csv"), "--from", folder.toString());
    assertTrue(pumps.out().contains("spaced"), pumps.err() + pumps.out());
  }

  @Test
  void aFileOfArgumentsIsNotRead() throws IOException {
    project("mine.csv");
    refused(Run.of("solve", "@" + folder.resolve("pond.yaml")), "there is no such file");
  }

  /** The YAML reader broke a pair of surrogates at each end of its buffer. */
  @Test
  void anEmojiMayStandAnywhere() throws IOException {
    String file = project("mine.csv");
    String text = Files.readString(Path.of(file));
    for (int before = 990; before < 1040; before++) {
      Files.writeString(
          Path.of(file), "# " + ".".repeat(before) + "\uD83D\uDC1F".repeat(1500) + "\n" + text);
      Run run = Run.of("check", file);
      assertEquals(0, run.status(), before + ": " + run.err());
    }
  }

  @Test
  void namesInJsonMayBeAsLongAsTheFile() throws IOException {
    String name = "x".repeat(60_000);
    Path file = folder.resolve("pond.json");
    Files.writeString(
        file, "{\"points\": {\"" + name + "\": {\"kind\": \"basin\", \"levl\": \"0 m\"}}}");
    Run run = Run.of("check", file.toString());
    refused(run, "there is no field \"levl\"; did you mean \"level\"?");
    assertTrue(run.err().length() < 1000, run.err());
  }

  /** What was meant by one of several names of 49 kB is not searched letter by letter. */
  @Test
  void longNamesAreComparedSoon() throws IOException {
    List<String> points = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (String letter : List.of("a", "b", "c", "d")) {
      String name = letter.repeat(49_000);
      points.add("\"%s\": {\"kind\": \"basin\", \"level\": \"0 m\"}".formatted(name));
      lines.add("\"%s\": {\"from\": \"%sx\", \"to\": \"y%s\"}".formatted(letter, name, name));
    }
    String text =
        "{\"points\": {%s}, \"lines\": {%s}}"
            .formatted(String.join(", ", points), String.join(", ", lines));
    Path file = Files.writeString(folder.resolve("long.json"), text);
    MeasuredRun run = MeasuredRun.of("check", file.toString());
    assertEquals(2, run.status());
    assertTrue(run.err().contains("there is no point"), run.err());
    assertTrue(run.allocatedBytes() < 500_000_000, run.allocatedBytes() + " bytes");
  }

  @Test
  void anEmptyNameIsNotOffered() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("pond.yaml"),
            "points: {'': {kind: basin, level: 0 m}}\nlines: {up: {from: pond, to: top}}\n");
    Run run = Run.of("check", file.toString());
    refused(run, "there is no point \"pond\"\n");
  }

  @Test
  void noPictureReplacesAFileUnasked() throws IOException {
    String file = project("mine.csv");
    assertEquals(0, Run.of("chart", file).status());
    Path picture = folder.resolve("pond.png");
    byte[] mine = {1, 2, 3};
    Files.write(picture, mine);
    refused(Run.of("chart", file), "this file exists already; name the picture with --to");
    assertArrayEquals(mine, Files.readAllBytes(picture));
    assertEquals(0, Run.of("chart", file, "--to", picture.toString()).status());
  }

  /** The project itself may have a picture's name: the picture is then to be named. */
  @Test
  void aProjectWithTheNameOfItsPictureIsKept() throws IOException {
    for (String name : List.of("fall.png", "fall.PNG")) {
      Path file = folder.resolve(name);
      Files.copy(Path.of(project("mine.csv")), file);
      byte[] written = Files.readAllBytes(file);
      refused(Run.of("chart", file.toString()), "this file exists already; name the picture");
      assertArrayEquals(written, Files.readAllBytes(file));
    }
  }

  @Test
  void aPicturesNameMayBeAsLongAsTheFolderTakes() throws IOException {
    Path picture = folder.resolve("x".repeat(246) + ".svg");
    Run run = Run.of("chart", project("mine.csv"), "--to", picture.toString());
    assertEquals(0, run.status(), run.err());
    assertTrue(Files.exists(picture));
  }

  @Test
  void noCallsAreTooFew() throws IOException {
    String file = project("mine.csv");
    refused(Run.of("weak-trial", file, "--calls", "0"), "--calls: 0 is too few; write 1 or more");
  }

  @Test
  void aTrialNeedsEnoughToRead() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("little.yaml"),
            """
            points:
              pond: {kind: basin, level: 0 m}
              fall: {kind: fall, crest: 1 m, width: 0.5 m, target: 1 L/s}
            lines:
              up: {from: pond, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm},
                parts: [{pump: p}, {run: 5 m}]}
            pumps:
              p: {points: [{flow: 0 L/s, head: 4 m}, {flow: 4 L/s, head: 0 m}]}
            """);
    refused(Run.of("weak-trial", file.toString()), "little.yaml: too little can be read");
  }

  /** However many gauges there are, nobody calls because of a fall that is dry as built. */
  @Test
  void aTrialNeedsAFallThatRuns() throws IOException {
    String gauges = "gauge: {name: G%d, elevation: 0 m}";
    StringBuilder parts = new StringBuilder("pump: mine");
    for (int i = 0; i < 6; i++) {
      parts.append(", ").append(gauges.formatted(i)).append(", run: 2 ft");
    }
    Path file = folder.resolve("pond.yaml");
    String dry = (POINTS + REST).replace("crest: 3 ft", "crest: 60 ft");
    String project = dry.replace("pump: mine, run: 20 ft", parts) + "pumps: {mine: mine.csv}\n";
    Files.writeString(file, project);
    assertEquals(0, Run.of("check", file.toString()).status());
    refused(Run.of("weak-trial", file.toString(), "--calls", "1"), "one of them at a fall that");
  }

  @Test
  void twoPumpsInOneLineAreNotDistinguishedByItsName() throws IOException {
    String two = (POINTS + REST).replace("pump: mine,", "pump: mine, pump: mine,");
    Path file = Files.writeString(folder.resolve("pond.yaml"), two + "pumps: {mine: mine.csv}\n");
    String answer = "line \"up\" has 2 pumps; write the one to study as \"- pump: to be chosen\"";
    refused(Run.of("duty", file.toString()), answer);
    refused(Run.of("duty", file.toString(), "--pump", "up"), answer);
    Files.writeString(file, two.replace("pump: mine", "pump: to be chosen"));
    refused(
        Run.of("duty", file.toString()),
        "has 2 pumps to be chosen; choose all but one by name first");
  }

  @Test
  void waterThatRunsByItselfAsksForNoPump() throws IOException {
    String file = project("mine.csv");
    Run run = Run.of("duty", file, "--set", "points.top.crest=-2 ft");
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("none"), run.out());
    assertTrue(run.out().contains("No pump is needed in \"up\""), run.out());
    String sheets = "../examples/long-stream/supplier";
    Run pumps = Run.of("pumps", file, "--from", sheets, "--set", "points.top.crest=-2 ft");
    for (String out : List.of(run.out(), pumps.out())) {
      assertFalse(out.contains("must make"), out);
      assertTrue(out.contains("o pump is needed in \"up\""), out);
    }
  }

  @Test
  void aLineWithoutAPumpIsAnsweredWithARemedy() throws IOException {
    String more =
        "  down: {from: top, to: pond, pipe: {inside: 2 in, roughness: 0.01 mm}, parts: [run: 2"
            + " ft]}\n";
    Path file = folder.resolve("pond.yaml");
    Files.writeString(file, POINTS + REST + more + "pumps: {mine: mine.csv}\n");
    refused(
        Run.of("chart", file.toString(), "--pump", "down"),
        "line \"down\" has no pump; write one in it, for example");
  }
}
