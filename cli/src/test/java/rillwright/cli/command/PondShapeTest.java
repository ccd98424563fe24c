package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.examples.ExampleSheets;

/** A pond given by length, width, depth and shelves is the same pond as one given by rows. */
class PondShapeTest {
  private static final Path EXAMPLE = Path.of("..", "examples", "long-stream");

  @TempDir private Path folder;

  /** The example with another pond, its data sheets beside it. */
  private String withPond(String shape) throws IOException {
    String text = Files.readString(EXAMPLE.resolve("stream.yaml"));
    int from = text.indexOf("    shape:\n");
    int to = text.indexOf("  chamber:", from);
    String changed = text.substring(0, from) + "    shape: " + shape + "\n" + text.substring(to);
    ExampleSheets.layInto(folder, EXAMPLE);
    return Files.writeString(folder.resolve("pond.yaml"), changed).toString();
  }

  @Test
  void levelsAreThoseOfTheRowsWrittenByHand() throws IOException {
    String rows =
        Run.of(
                "stream",
                withPond(
                    "[{level: -1.2 m, area: 4.16 m2}, {level: -0.9 m, area: 4.16 m2}, {level: -0.9"
                        + " m, area: 8.16 m2}, {level: -0.45 m, area: 8.16 m2}, {level: -0.45 m,"
                        + " area: 12 m2}, {level: 0 m, area: 12 m2}]"))
            .out();
    Run terraced =
        Run.of(
            "stream",
            withPond(
                "{length: 4 m, width: 3 m, depth: 1.2 m, shelves: [{depth: 0.45 m, width: 0.3 m},"
                    + " {depth: 0.9 m, width: 0.4 m}]}"));

    assertEquals("", terraced.err());
    assertEquals(rows, terraced.out());
    assertTrue(rows.contains("LEVELS OF \"pond\""), rows);
  }

  @Test
  void shelfWithoutDepthLiesEighteenInchesBelowWhatIsAbove() throws IOException {
    String shown =
        Run.of(
                "check",
                withPond("{length: 4 m, width: 3 m, depth: 1.2 m, shelves: [{width: 0.5 m}]}"))
            .out();

    // 12 · 0.4572 + 3 · 2 · (1.2 − 0.4572) m³
    assertTrue(shown.contains("holds 9,940 L"), shown);
  }

  @ParameterizedTest(name = "\"{0}\"")
  @ValueSource(strings = {"", ", top: 0 m"})
  void whereTheWaterFallsTheFloorStays(String top) throws IOException {
    String file = withPond("{length: 4 m, width: 3 m, depth: 1.2 m" + top + "}");

    String shown = Run.of("check", file, "--set", "points.pond.level=-0.2 m").out();

    assertTrue(shown.contains("holds 12,000 L"), shown);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{length: 4 m, width: 3 m} | \"depth\" is missing",
        "{length: 4 m, width: 3 m, depth: -1 m} | greater than 0",
        "{length: 4 m, width: 3 m, depth: 1 m, shelves: [{depth: 1 m, width: 1 m}]} | above the"
            + " floor",
        "{length: 4 m, width: 3 m, depth: 1 m, shelves: [{width: 1.5 m}]} | no floor is left",
        "{length: 4 m, width: 3 m, depth: 2 m, shelves: [{depth: 1 m, width: 0.2 m}, {depth: 0.5 m,"
            + " width: 0.2 m}]} | from the brim down",
        "{length: 4 m, width: 3 m, deph: 1 m} | did you mean \"depth\"",
        "4 m | length: 3.7 m",
      })
  void whatCannotBeAPondIsReported(String shape, String words) throws IOException {
    Run run = Run.of("check", withPond(shape));

    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains(words), run.err());
    assertTrue(run.err().contains("pond.yaml:"), run.err());
  }
}
