package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What is said of pumps, and where it stands. */
class ChosenPumpWordsTest extends ScratchSupplier {
  private static final Path STREAM = Path.of("..", "examples", "long-stream");

  private static final String SECOND =
      """
        second:
          from: chamber
          to: split
          pipe: {material: PVC schedule 40, size: 2 in}
          parts:
            - pump: to be chosen
            - check valve: {type: swing}
            - run: 14 ft
      """;

  private String twin(String what, String by) throws IOException {
    return TwinFalls.changed("falls.yaml", folder, what, by);
  }

  private String withSecondPump() throws IOException {
    return twin("  low:\n    from: split", SECOND + "  low:\n    from: split");
  }

  private static String text(String... arguments) {
    return Run.of(arguments).flat();
  }

  @Test
  void secondPumpThatTheFirstMakesNeedlessIsNotNeeded() throws IOException {
    sheet("vario.csv", "# variable speed: 40..100 %\n" + TwinFalls.SHEET);

    String text = text("pumps", withSecondPump(), "--from", list.toString(), "--pump", "second");
    Run.assertReported(
        text,
        "the pump in \"supply\" alone gives every fall its target: none is needed in \"second\"",
        "not needed");
    assertFalse(text.contains("throttled to 0 gph"), text);
    assertFalse(text.contains("or 0 gph"), text);
  }

  @Test
  void pumpOfAnotherKindSaysHowItStands() throws IOException {
    String in = "in the file is submersible: dry. Such a pump stands beside the water";
    sheet("dry.csv", "# kind: external\n" + TwinFalls.SHEET);
    sheet("wet.csv", "# kind: submersible\n" + TwinFalls.SHEET);
    String project = twin("title: ", "title: ");
    Run.assertReported(
        text("pumps", project, "--from", list.toString()), "External, while P-400 " + in);

    Files.delete(list.resolve("dry.csv"));
    String same = text("pumps", project, "--from", list.toString());
    assertFalse(same.contains("External, while"), same);
  }

  @Test
  void dutyOfANeedlessPumpIsNotPriced() throws IOException {
    String text = text("duty", withSecondPump(), "--pump", "second");
    Run.assertReported(text, "none is needed in \"second\"");
    assertFalse(text.contains("from the wire"), text);
  }

  @Test
  void sizesAtANeedlessPumpSaySo() throws IOException {
    sheet("strong.csv", TwinFalls.SHEET);
    String text =
        text(
            "pipes",
            withSecondPump(),
            "--line",
            "second",
            "--sizes",
            "2 in, 3 in",
            "--from",
            list.toString());
    Run.assertReported(text, "none is needed in \"second\"");
    assertFalse(text.contains("With none of these sizes"), text);
  }

  @Test
  void pumpWithoutAPriceComesAfterThoseWithOneAndIsMarkedByTheTable() throws IOException {
    sheet("cheap.csv", TwinFalls.SHEET);
    sheet("priced.csv", "# price: 900 USD\n" + TwinFalls.SHEET.replace("5", "6"));

    String text = text("pumps", twin("title", "title"), "--from", list.toString());
    assertTrue(text.indexOf(" priced ") < text.indexOf(" cheap "), text);
    Run.assertReported(text, "USD + pump meets the target");
    assertTrue(text.indexOf("has no price") < text.indexOf("OPERATING POINTS"), text);
  }

  /** The chamber of the example has no more than 20 in over its pump's intake. */
  @Test
  void pumpThatAsksForMoreWaterOverItThanThereIsIsNotFirst() throws IOException {
    sheet("deep.csv", "# price: 300 USD\n# min submergence: 30 in\n" + TwinFalls.SHEET);
    sheet("shallow.csv", "# price: 900 USD\n# min submergence: 8 in\n" + TwinFalls.SHEET);

    String text = text("pumps", twin("title", "title"), "--from", list.toString());
    Run.assertReported(text, "Ranked first: shallow");
    assertTrue(text.contains("low submergence"), text);
  }

  @Test
  void sheetWhoseOutputExceedsItsInputIsNotTried() throws IOException {
    sheet("tenth.csv", TwinFalls.SHEET.replace(",190", ",19"));
    sheet("right.csv", TwinFalls.SHEET);

    // 1900 gph at 20 ft: 998.2 · 9.80665 · 0.0019979 · 6.096 W
    String shown =
        "tenth.csv: power cannot be right: hydraulic output exceeds electrical input at 1,900 gph:"
            + " 119 W of water from 19 W; check the unit";
    String project = twin("title", "title");
    Run.assertReported(text("pumps", project, "--from", list.toString()), shown);
    Run.assertReported(
        text("pipes", project, "--line", "supply", "--sizes", "2 in", "--from", list.toString()),
        shown);

    Files.delete(list.resolve("right.csv"));
    Run run = Run.of("pumps", project, "--from", list.toString());
    assertEquals(2, run.status());
    Run.assertReported(run.err(), shown);
  }

  @Test
  void projectsOwnImpossibleSheetIsReportedAndNotRefused() throws IOException {
    sheet("tenth.csv", TwinFalls.SHEET.replace(",190", ",19"));
    String project = twin("P-400: pumps/P-400.csv", "P-400: " + list.resolve("tenth.csv"));

    Run.assertReported(
        text("solve", project),
        "The power on the data sheet of \"P-400\" in \"supply\" cannot be right: hydraulic"
            + " output exceeds electrical input at 1,900 gph, 119 W of water from 19 W.");
    Run.assertReported(text("check", project), "the power on its data sheet cannot be right");
  }

  @Test
  void rowOfAThrottledPumpIsAtTheThrottledPoint() {
    String text = text("pumps", STREAM + "/stream.yaml", "--from", STREAM + "/supplier");
    Run.assertReported(
        text,
        "B-350 9.00 m3/h 100 % 261 W 2,290 kWh 7,100 EUR meets the target when throttled",
        "B-350 9.00 m3/h 6.2 m 49 % 99 % 58 % 689 EUR none",
        "Rows marked \"throttled\" show throttled figures");
  }

  @Test
  void throttlingWithoutAValveSaysThatOneIsMissing() throws IOException {
    sheet("strong.csv", TwinFalls.SHEET);
    String low = "      - valve: {k: 0.1, adjustable: yes}\n";
    String text = text("pumps", twin(low, ""), "--from", list.toString());
    Run.assertReported(
        text,
        "meets the target when throttled, no valve",
        "the valve for it is missing: fit one on the way to \"low fall\"");
  }

  @Test
  void findingsThatThrottlingRemovesAreNotReportedOfTheBest() throws IOException {
    sheet("strong.csv", TwinFalls.SHEET);
    String text = text("pumps", twin("title", "title"), "--from", list.toString());
    Run.assertReported(text, "Ranked first: strong, meets the target when throttled");
    assertFalse(text.contains("short of the"), text);
  }

  @Test
  void pictureMarksTheThrottledPointWithTheNumbersOfTheTable() throws IOException {
    sheet("strong.csv", TwinFalls.SHEET);
    Path picture = folder.resolve("pumps.svg");
    String text =
        text(
            "pumps",
            twin("title", "title"),
            "--from",
            list.toString(),
            "--chart",
            picture.toString());
    String svg = Files.readString(picture);
    Run.assertReported(svg, "strong, throttled", "3,600 gph at 12.3 ft", "233 W");
    Run.assertReported(text, "strong 2,160 gph 100 % 1,440 gph 100 % 233 W", "3,600 gph 12.3 ft");
  }

  @Test
  void pumpFarFromItsBestEfficiencyIsToLookOutFor() {
    String text = text("pumps", STREAM + "/stream.yaml", "--from", STREAM + "/supplier");
    Run.assertReported(
        text,
        "130 % 53 % 529 EUR far from best efficiency",
        "The pump in \"supply\" runs at 130 % of the flow of its best efficiency; 70 % to 120 % is"
            + " recommended, since it wears sooner outside (common practice).");
    Run.assertReported(
        text("solve", "../examples/twin-falls/falls.yaml"),
        "runs at 134 % of the flow of its best efficiency");
  }

  @Test
  void conditionThatChangesWhatIsTriedIsReported() {
    String falls = Path.of("..", "examples", "old-falls", "falls.yaml").toString();
    String sheets = Path.of("..", "examples", "old-falls", "pumps").toString();

    Run run = Run.of("pumps", falls, "--from", sheets, "--condition", "five years fouled");

    assertEquals(0, run.status(), run.err());
    assertTrue(
        run.flat().contains("\"five years fouled\": lines.supply.pump.speed 96 %"), run.out());
    assertFalse(
        Run.of("pumps", falls, "--from", sheets, "--condition", "autumn")
            .flat()
            .contains("Leave it"),
        "autumn changes no pump");
  }
}
