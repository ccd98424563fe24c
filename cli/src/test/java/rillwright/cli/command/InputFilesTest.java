package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No picture is written over a file that is read, nor begun where it cannot be written. */
class InputFilesTest {
  private static final String SHEET = "flow [gph],head [ft]\n0,20\n3000,0\n";

  @TempDir private Path folder;
  private String project;
  private Path other;

  @BeforeEach
  void writeInputs() throws IOException {
    Files.writeString(write("my pump.svg"), SHEET);
    other = Files.writeString(write("autumn pump.svg"), SHEET);
    Files.createDirectory(folder.resolve("supplier"));
    Files.writeString(write("supplier/a.csv"), SHEET);
    project =
        Files.writeString(
                write("pond.yaml"),
                """
                points:
                  pond: {kind: basin, level: 0 ft, area: 100 ft2}
                  top: {kind: fall, crest: 3 ft, width: 12 in, target: 900 gph}
                lines:
                  up:
                    from: pond
                    to: top
                    pipe: {inside: 2 in, roughness: 0.01 mm}
                    parts: [pump: mine, run: 20 ft ± 2 ft, valve: {type: ball, open: 100 %, adjustable: yes}]
                pumps: {mine: my pump.svg}
                conditions:
                  autumn: {pumps: {mine: autumn pump.svg}}
                """)
            .toString();
  }

  private Path write(String name) {
    return folder.resolve(name);
  }

  private void refuses(String what, Path picture, String... arguments) throws IOException {
    byte[] before = Files.readAllBytes(picture);
    Run run = Run.of(arguments);
    assertEquals(2, run.status(), run.out());
    String message = picture + ": this is " + what + "; a picture needs its own name\n";
    assertEquals(message, run.err());
    assertEquals("", run.out());
    assertArrayEquals(before, Files.readAllBytes(picture));
  }

  @Test
  void noCommandDrawsOverADataSheetOfTheProject() throws IOException {
    Path sheet = write("my pump.svg");
    String named = "a data sheet that the project names";
    for (String command : List.of("odds", "balance", "stream", "weak")) {
      refuses(named, sheet, command, project, "--chart", sheet.toString());
    }
    refuses(named, sheet, "chart", project, "--to", sheet.toString());
    refuses(named, sheet, "section", project, "--to", sheet.toString());
    String from = write("supplier").toString();
    refuses(named, sheet, "pumps", project, "--from", from, "--chart", sheet.toString());
    refuses(named, other, "pumps", project, "--from", from, "--chart", other.toString());
    refuses(
        named,
        sheet,
        "pipes",
        project,
        "--line",
        "up",
        "--sizes",
        "2 in",
        "--chart",
        sheet.toString());
  }

  @Test
  void anotherNameOfAnInputIsThatInput() throws IOException {
    Path link = Files.createSymbolicLink(write("link.svg"), write("my pump.svg"));
    refuses("a data sheet that the project names", link, "chart", project, "--to", link.toString());
    Path toFolder = Files.createSymbolicLink(write("elsewhere"), folder).resolve("my pump.svg");
    refuses(
        "a data sheet that the project names",
        toFolder,
        "chart",
        project,
        "--to",
        toFolder.toString());
    Path toProject = Files.createSymbolicLink(write("project.png"), Path.of(project));
    refuses("the project file", toProject, "chart", project, "--to", toProject.toString());
  }

  @Test
  void aSheetOfTheSuppliersFolderIsKept() throws IOException {
    Path sheet = write("supplier/a.csv");
    Path link = Files.createSymbolicLink(write("a.png"), sheet);
    String from = write("supplier").toString();
    String what = "a data sheet of the folder " + from;
    refuses(what, link, "pumps", project, "--from", from, "--chart", link.toString());
    refuses(
        what,
        link,
        "pipes",
        project,
        "--line",
        "up",
        "--sizes",
        "2 in",
        "--from",
        from,
        "--chart",
        link.toString());
  }

  @Test
  void readingsAndPriorsAreKept() throws IOException {
    Path today = Files.writeString(write("today.svg"), "signs: [sudden]\n");
    String chart = today.toString();
    refuses(
        "the file of readings",
        today,
        "weak",
        project,
        "--readings",
        today.toString(),
        "--chart",
        chart);
    refuses("the file of priors", today, "weak", project, "--priors", chart, "--chart", chart);
  }

  @Test
  void whereNoPictureCanBeWrittenNothingIsComputedFirst() throws IOException {
    String nowhere = write("nodir/x.png").toString();
    Run run = Run.of("odds", project, "--chart", nowhere);
    assertEquals(2, run.status());
    assertEquals(
        nowhere + ": the picture cannot be written there: there is no such folder\n", run.err());
    assertFalse(Files.exists(write("nodir")));
  }

  @Test
  void aPictureThatIsThereAlreadyIsReplacedAndNothingIsLeftBeside() throws IOException {
    Path picture = Files.writeString(write("old.svg"), "old");
    final long before = files();
    assertEquals(0, Run.of("chart", project, "--to", picture.toString()).status());
    assertTrue(Files.readString(picture).contains("<svg"));
    assertEquals(before, files());
  }

  private long files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.count();
    }
  }
}
