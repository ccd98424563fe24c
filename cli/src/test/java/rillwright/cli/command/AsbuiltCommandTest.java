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
  private static final String ON_THE_DAY = FOLDER.resolve("on-the-day.yaml").toString();

  @TempDir private Path folder;

  @Test
  void theNewFileSaysWhatWasLearntAndKeepsAllElse() throws IOException {
    Path built = folder.resolve("as-built.yaml");
    Run run = Run.of("asbuilt", FALLS, "--readings", ON_THE_DAY, "--to", built.toString());
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
    Run.of("asbuilt", FALLS, "--readings", ON_THE_DAY, "--to", FALLS)
        .assertRefused("this is the project file; a new project file needs its own name");
    Run.of("asbuilt", FALLS, "--readings", ON_THE_DAY, "--to", ON_THE_DAY)
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
    JsonNode answer = Run.json("asbuilt", FALLS, "--readings", ON_THE_DAY);
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
        Files.readString(Path.of(ON_THE_DAY)).replace("pressure: 4.1 psi", "pressure: 6.1 psi");
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

  /** The readings of the example were made, with small errors, of the pump and pipe named here. */
  @Test
  void aPumpAndAPipeThatNobodyKnewComeBackWithTheirBands() throws IOException {
    Path sheet = folder.resolve("old-pump.csv");
    String file = "../examples/old-pump/fall.yaml";
    Run run = Run.of("asbuilt", file, "--pump-sheet", sheet.toString());
    assertEquals(0, run.status(), run.err());
    assertEquals(read(Path.of("../examples/old-pump/old-pump.csv")), read(sheet), "the example");

    JsonNode answer = Run.json("asbuilt", file);
    ResultSchema.assertTakes(answer.toString());
    assertTrue(answer.path("fits").booleanValue());
    int held = 0;
    for (JsonNode point : answer.path("pumps").path("old pump").path("points")) {
      double share = point.path("flowM3PerS").doubleValue() / (12.5 / 3600);
      double truth = Math.max(0, 7.6 * (1 - Math.pow(share, 1.8)));
      JsonNode band = point.path("head");
      boolean holds =
          truth >= band.path("p5").doubleValue() && truth <= band.path("p95").doubleValue();
      held += holds ? 1 : 0;
      assertTrue(width(band) < 1.6, "4 to 12 m before: " + point);
    }
    assertTrue(held >= 9, held + " of 11 points");
    JsonNode sizes = size(answer).path("sizes");
    assertEquals("63 mm", sizes.get(1).path("size").stringValue());
    assertTrue(sizes.get(1).path("after").doubleValue() > 0.9, sizes.toString());
  }

  /** 4.6 m3/h with the valve at 30 %: as its bucket read it; no flow with it shut. */
  @Test
  void thePumpsCurveIsDrawnOverWhatWasRead() throws IOException {
    Path picture = folder.resolve("curve.png");
    String file = "../examples/old-pump/fall.yaml";
    Run run = Run.of("asbuilt", file, "--chart", picture.toString());
    assertEquals(0, run.status(), run.err());
    assertTrue(Files.size(picture) > 10_000);
    JsonNode read = Run.json("asbuilt", file).path("pumps").path("old pump").path("read");
    assertEquals(4, read.size(), "one for each reading of its gauge");
    assertEquals(0, read.get(0).path("flowM3PerS").doubleValue(), 1e-9);
    assertEquals(4.6 / 3600, read.get(1).path("flowM3PerS").doubleValue(), 0.02 * 4.6 / 3600);
    for (JsonNode spot : read) {
      // 7.6 m (1 - (Q / 12.5 m3/h)^1.8) is what the readings were made of
      double share = spot.path("flowM3PerS").doubleValue() / (12.5 / 3600);
      double truth = 7.6 * (1 - Math.pow(share, 1.8));
      assertEquals(truth, spot.path("headM").doubleValue(), 0.35, spot.toString());
      assertTrue(spot.path("flowRead").booleanValue(), spot.toString());
    }
    String html = Run.of("asbuilt", file, "--format", "html").out();
    assertTrue(html.contains("<svg") && html.contains("valve at 45 %"), "drawn in the page");
    Run.of("asbuilt", FALLS, "--readings", ON_THE_DAY, "--chart", picture.toString())
        .assertRefused("every pump of the file has its data sheet");
    Run.of("asbuilt", file, "--chart", folder.resolve("curve.txt").toString())
        .assertRefused("a picture's name ends in .png or .svg");
  }

  private static JsonNode size(JsonNode answer) {
    for (JsonNode quantity : answer.path("quantities")) {
      if (quantity.path("quantity").stringValue().equals("lines.supply.pipe.size")) {
        return quantity;
      }
    }
    throw new AssertionError("no size");
  }

  @Test
  void aValveThatIsSetNeedsATypeAndAPosition() throws IOException {
    String file = read(Path.of("../examples/old-pump/fall.yaml"));
    Path other = folder.resolve("fall.yaml");
    Files.writeString(other, file.replace("{type: ball, open: 100 %}", "{k: 0.1}"));
    Run.of("asbuilt", other.toString()).assertRefused("the last valve of this line has no type");
    Files.writeString(other, file.replace(", open: 45 %", ""));
    Run.of("asbuilt", other.toString()).assertRefused("open");
    Files.writeString(other, file.replace("shut-off: 4 m .. 12 m, ", ""));
    Run.of("asbuilt", other.toString()).assertRefused("shut-off");
  }
}
