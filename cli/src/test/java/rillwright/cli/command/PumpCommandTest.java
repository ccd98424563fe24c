package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class PumpCommandTest {
  private static final String SHEET =
      """
      # invented
      # voltage: 115 V
      # power factor: 0.8
      flow [gph],head [ft],power [W],noise [dB]
      0,22,250,40
      1900,20,350,40
      3800,11,405,40
      4900,0,460,40
      """;

  @TempDir private Path folder;

  private String sheet(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void tellsTheTableTheCurveAndTheMeter() throws IOException {
    String flat = Run.of("pump", sheet("P-180.csv", SHEET)).flat();
    Run.assertReported(
        flat,
        "1,900 gph 20 ft 350 W 34 %", // 2.0 L/s of water by 6.1 m: 119 W
        "Shut-off head 22 ft; the sheet ends at 4,900 gph.",
        "most on its curve 460 W 5.0 A",
        "passed over: \"noise [dB]\"",
        "a qualified electrician, licensed where the law requires it");
  }

  @Test
  void withoutAPowerFactorAmpsAreABandAndSayWhy() throws IOException {
    String file = sheet("P.csv", SHEET.replace("# power factor: 0.8\n", ""));
    Run.assertReported(
        Run.of("pump", file, "--volts", "230").flat(),
        "most on its curve 460 W 2.0 to 3.3 A",
        "(common practice");
  }

  @Test
  void jsonHasTheSameFigures() throws IOException {
    JsonNode sheet = Run.json("pump", sheet("P-180.csv", SHEET)).get("sheets").get(0);
    assertEquals("P-180", sheet.get("pump").asString());
    assertEquals(4, sheet.get("points").size());
    assertEquals(460 / 115.0 / 0.8, sheet.get("ratedCurrent").get("leastA").asDouble(), 1e-12);
    JsonNode best = sheet.get("bestEfficiency");
    assertEquals(
        998.2 * 9.80665 * best.get("flowM3PerS").asDouble() * best.get("headM").asDouble(),
        best.get("wireToWater").asDouble() * best.get("powerW").asDouble(),
        0.05);
  }

  @Test
  void writesTheSheetInTheOtherUnitsAndBack() throws IOException {
    String file = sheet("P-180.csv", SHEET);
    Path metric = folder.resolve("metric.csv");
    Run.of("pump", file, "--to", metric.toString()).flat();
    assertTrue(Files.readString(metric).contains("flow [m3/h],head [m],power [W]\n0,6.7056,250\n"));
    Path back = folder.resolve("back.csv");
    Run.of("pump", metric.toString(), "--to", back.toString()).flat();
    assertTrue(Files.readString(back).contains("\n1900,20,350\n"), Files.readString(back));
  }

  @Test
  void severalStandInOnePictureAndOnePage() throws IOException {
    Path picture = folder.resolve("list.svg");
    Run run =
        Run.of(
            "pump",
            sheet("A.csv", SHEET),
            sheet("B.csv", SHEET.replace("gph", "gpm").replace("00,", ",")),
            "--chart",
            picture.toString());
    Run.assertReported(run.flat(), "A: ON THE DATA SHEET", "B: ON THE DATA SHEET");
    assertTrue(Files.readString(picture).contains(">B<"));
  }

  @Test
  void refusesWhatIsWrongAndWritesNothing() throws IOException {
    String file = sheet("P.csv", SHEET);
    Run.of("pump", file, "--to", file).assertRefused("P.csv", "this is a data sheet");
    assertEquals(SHEET, Files.readString(Path.of(file)));
    Run.of("pump", file, "--show", "imperial").assertRefused("choose us or metric");
    Run.of("pump", file, "--volts", "0").assertRefused("--volts");
    Run.of("pump", sheet("bad.csv", SHEET.replace("115 V", "115")))
        .assertRefused("bad.csv:2:", "\"115\" is not a voltage", "such as 115 V");
    Path two = folder.resolve("two.csv");
    Run.of("pump", file, file, "--to", two.toString()).assertRefused("name one");
    Run.of("pump", file, "--format", "json", "--to", two.toString())
        .assertRefused("leave --format");
    assertFalse(Files.exists(two));
    Run.of("pump", folder.resolve("none.csv").toString()).assertRefused("none.csv");
  }

  @Test
  void aSheetOffByAFactorOfSixtyIsDoubted() throws IOException {
    Run.assertReported(
        Run.of("pump", sheet("P.csv", SHEET.replace("gph", "gpm"))).flat(),
        "cannot be right",
        "flows 60 times smaller");
  }
}
