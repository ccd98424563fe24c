package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.schema.ResultSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What readings say of what was not known. All data is invented. */
class AsbuiltCommandTest {
  private static final Path FOLDER = Path.of("../examples/old-falls");
  private static final String FALLS = FOLDER.resolve("falls.yaml").toString();
  private static final String LAST_DAY = FOLDER.resolve("last-day.yaml").toString();

  @TempDir private Path folder;

  @Test
  void theNewFileSaysWhatWasLearntAndKeepsAllElse() throws IOException {
    Path built = folder.resolve("as-built.yaml");
    Run run = Run.of("asbuilt", FALLS, "--readings", LAST_DAY, "--to", built.toString());
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().startsWith("Written: "), run.out());
    assertEquals(
        Files.readString(FOLDER.resolve("as-built.yaml")), Files.readString(built), "the example");
    String before = Files.readString(Path.of(FALLS));
    before
        .lines()
        .filter(line -> line.contains("#"))
        .map(line -> line.replaceFirst(".*#", "#"))
        .forEach(comment -> assertTrue(read(built).contains(comment), comment));
  }

  @Test
  void theOldFileAndTheReadingsAreNeverWrittenOver() throws IOException {
    String before = read(Path.of(FALLS));
    Run.of("asbuilt", FALLS, "--readings", LAST_DAY, "--to", FALLS)
        .assertRefused("this is the project file; a new project file needs its own name");
    Run.of("asbuilt", FALLS, "--readings", LAST_DAY, "--to", LAST_DAY)
        .assertRefused("this is the file of readings; a new project file needs its own name");
    assertEquals(before, read(Path.of(FALLS)));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void quantitiesAreAddressedAsInOddsAndNarrowed() {
    JsonNode answer = Run.json("asbuilt", FALLS, "--readings", LAST_DAY);
    ResultSchema.assertTakes(answer.toString());
    assertEquals(13, answer.path("quantities").size());
    Run odds = Run.of("odds", FALLS, "--samples", "100", "--format", "json");
    for (JsonNode driver : new ObjectMapper().readTree(odds.out()).path("drivers")) {
      String address = driver.path("quantity").stringValue();
      assertTrue(answer.path("quantities").toString().contains('"' + address + '"'), address);
    }
    for (JsonNode fall : answer.path("falls")) {
      assertTrue(width(fall.path("after")) < 0.6 * width(fall.path("before")), fall.toString());
    }
    assertEquals(5, answer.path("readings").size());
    assertTrue(answer.path("fits").booleanValue());
  }

  private static double width(JsonNode band) {
    return band.path("p95").doubleValue() - band.path("p5").doubleValue();
  }

  @Test
  void aReadingThatFitsNothingIsFoundOut() throws IOException {
    String wrong =
        Files.readString(Path.of(LAST_DAY)).replace("pressure: 4.1 psi", "pressure: 6.1 psi");
    String readings = Files.writeString(folder.resolve("r.yaml"), wrong).toString();
    JsonNode answer = Run.json("asbuilt", FALLS, "--readings", readings);
    assertFalse(answer.path("fits").booleanValue());
    assertTrue(answer.path("readings").get(3).path("deviations").doubleValue() > 2.5);
    String text = Run.of("asbuilt", FALLS, "--readings", readings).flat();
    Run.assertReported(text, "5 readings disagree with all that the ranges allow", "Read again");
  }

  @Test
  void withoutReadingsOrRangesThereIsNothingToLearn() {
    Run.of("asbuilt", FALLS).assertRefused("there are no readings to learn from");
    Run.of("asbuilt", "../examples/weak-fall/fall.yaml")
        .assertRefused("every value in the network is exact here");
  }
}
