package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.examples.ExampleSheets;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class StreamCommandTest {
  private static final Path FOLDER = Path.of("..", "examples", "long-stream");
  private static final String DRY = FOLDER.resolve("dry.yaml").toString();

  private static final String LOWER_SILL = "lines.intake.skimmer.sill=-110 mm";

  @TempDir private Path folder;

  private String changed(String from, String to) throws IOException {
    Path file = folder.resolve("stream.yaml");
    String text = Files.readString(FOLDER.resolve("dry.yaml"));
    assertTrue(text.contains(from), from);
    ExampleSheets.layInto(folder, FOLDER);
    Files.writeString(file, text.replace(from, to));
    return file.toString();
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "from: spill box | from: spil box | did you mean \"spill box\"",
        "from: spill box | from: pond | begins at a fall",
        "to: pond | to: spill box | ends in a basin",
        "bed: {stone: 60 mm} | bed: {stone: 60 mm, n: 0.04} | either the size of its stones or its"
            + " n",
        "bed: {stone: 60 mm} | bed: coble | did you mean \"cobble\"",
        "width: 0.60 m, bank: 0, | width: 0 m, bank: 0, | is a vee and needs banks",
        "rate: 6 mm/day | rate: 6 mm/day, air: 20 C, humidity: 50 %, wind: 5 mph | either a rate",
        "length: 8 m, drop: 0.32 m | length: 0.3 m, drop: 0.32 m | which is a step",
        "box area: 0.15 m2 | box area: 0 m2 | box area"
      })
  void badGeometryIsAnsweredClearly(String from, String to, String words) throws IOException {
    Run run = Run.of("stream", changed(from, to));
    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains(words), run.err());
    assertTrue(run.err().contains("stream.yaml:"), run.err());
  }

  /** The table says how uncertain the water in transit is; the level must have room for it. */
  @Test
  void aLevelWithLessRoomThanTransitIsUncertainIsWarnedOf() {
    String job = FOLDER.resolve("stream.yaml").toString();
    String words =
        "\"pond\" holds only 36 L above the level at which its skimmer starves; 142 L more";
    String shown = Run.of("stream", job).flat();
    Run.assertReported(
        shown,
        words,
        " 3: reach, 8 m ",
        ", less the 30 L that chambers give, which stand lower",
        "The skimmer only just passes the flow at the level where it carries what runs now");
    assertFalse(Run.of("stream", job, "--set", LOWER_SILL).out().contains("L more may be"));
  }

  /** "stream" has the pond 55 mm lower than "solve", which holds it at rest. */
  @Test
  void solveSaysThatTheStreamTakesThePondDown() {
    String taken =
        "without that the stream takes water from there as it fills. \"rillwright stream\" gives";
    Run.assertReported(
        Run.of("solve", FOLDER.resolve("stream.yaml").toString()).flat(),
        taken,
        "Stream: these hold once it has filled and what feeds it is topped up to its level at rest");
    assertFalse(Run.of("solve", "../examples/fish-pond/pond.yaml").flat().contains(taken));
  }

  /** The intake is at -26 in, the pump asks for 12.5 in over it, the holes take 0.4 in. */
  @Test
  void whyAPumpDrawsAirAboveItsIntakeIsSaid() {
    String shown = Run.of("stream", "../examples/hidden-reservoir/fall.yaml").flat();
    Run.assertReported(
        shown,
        "starves at -13.2 in -13.2 in the pump draws air: it needs 12.5 in over its inlet, where the"
            + " water stands 0.4 in lower");
    assertFalse(shown.contains("only just passes"), shown);
  }

  @Test
  void toppingUpIsNotAdvisedWhereItRunsOverAtEachStop() {
    String shown = Run.of("stream", DRY).flat();
    Run.assertReported(
        shown,
        "gives only what comes in. A lower sill, a wider mouth, a larger pond or less water",
        "it would stay supplied too, but run over at each stop.",
        "once the pump stays supplied without topping up, top up with it off.");
    assertFalse(shown.contains("automatic fill"), shown);
    // above the sill the chamber's intake holds the water back
    Run.assertReported(
        Run.of("stream", DRY, "--set", "points.chamber.intake=-0.05 m").flat(),
        "A lower sill or intake, a larger pond");
  }

  @Test
  void twoStreamsCannotBeginAtOneFall() throws IOException {
    Run run =
        Run.of(
            "stream",
            changed(
                "streams:",
                "streams:\n  other: {from: spill box, to: pond, reaches: [{step: {height: 1 m,"
                    + " width: 1 m}}]}"));

    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains("begins there too"), run.err());
  }

  @Test
  void fallAndItsStreamMustAgreeOnTheWayHome() throws IOException {
    Run run =
        Run.of(
            "stream",
            changed(
                "  spill box: {kind: fall,",
                "  well: {kind: basin, level: 0 m, area: 4 m2}\n"
                    + "  spill box: {kind: fall, returns to: well,"));

    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().contains("says that its water returns to \"well\""), run.err());
  }

  @Test
  void streamInWhichNothingRunsIsReported() {
    Run run = Run.of("stream", DRY, "--set", "lines.supply.pump.speed=20 %");

    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("stays dry"), run.out());
  }

  /** Nothing "runs now" over a sill that stands out of the water. */
  @Test
  void skimmerThatStandsDryIsOneWarningAndItsPumpRunsDryInSolveToo() {
    String falls = FOLDER.resolveSibling("twin-falls/falls.yaml").toString();
    String low = "points.pond.level=-7 in";

    String stream = Run.of("stream", falls, "--set", low).flat();
    Run.assertReported(
        stream, "1 in below the skimmer's sill: nothing comes in, and the pump runs dry");
    assertFalse(stream.contains("passes no more than what runs now"), stream);
    Run.assertReported(
        Run.of("solve", falls, "--set", low).flat(),
        "supply 0 gph dry 250 W 23.6 ft 0 % of 4,945 gph pump P-400, runs dry");
  }

  @Test
  void fileWithoutAStreamIsReported() {
    Run run = Run.of("stream", FOLDER.resolveSibling("twin-falls/falls.yaml").toString());

    assertTrue(run.out().contains("describes no stream"), run.out());
    assertFalse(run.out().contains("Nothing that would stop"), run.out());
  }

  /** What a box holds below its crest stays there, though another fall lies lower on one pump. */
  @Test
  void boxThatSharesAPumpGivesBackOnlyWhatStandsAboveItsCrest() {
    Run run =
        Run.of(
            "stream",
            TwinFalls.FOLDER.resolve("falls.yaml").toString(),
            "--times",
            "--set",
            "points.high fall.box area=2 m2",
            "--format",
            "json");

    assertEquals(0, run.status(), run.err());
    JsonNode moments = new ObjectMapper().readTree(run.out()).get("course").get("moments");
    double last = moments.get(moments.size() - 1).get("levelM").get("pond").doubleValue();
    assertEquals(0, last, 1e-3);
  }

  /** 2.5, 2.5 and 15 gal are 20 gal: rounded one by one they would be shown as 21. */
  @Test
  void whatStaysAndCanFreezeAddsUpAsShown() {
    String file = FOLDER.resolveSibling("hidden-reservoir/fall.yaml").toString();
    String shown = Run.of("stream", file).out().replaceAll("\\s+", " ");
    Matcher stays = Pattern.compile(" ([0-9]+) gal stay:([^.]*)[.]").matcher(shown);
    assertTrue(stays.find(), shown);
    int sum =
        Pattern.compile("([0-9]+) gal")
            .matcher(stays.group(2))
            .results()
            .mapToInt(part -> Integer.parseInt(part.group(1)))
            .sum();
    assertEquals(Integer.parseInt(stays.group(1)), sum, stays.group());
  }

  @Test
  void timesAreATable() {
    String shown = Run.of("stream", DRY, "--times").out();

    assertTrue(shown.contains("START AND STOP"), shown);
    assertTrue(shown.matches("(?s).*off, 5 min +-0\\.030 m.*"), shown);
  }

  @Test
  void weatherIsTakenInPlaceOfARate() throws IOException {
    Run run = Run.of("stream", changed("rate: 6 mm/day", "air: 30 C, humidity: 40 %, wind: 5 mph"));
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("a day by evaporation"), run.out());
    assertFalse(run.out().contains("how warm the water is"), run.out());
  }

  @Test
  void waterOfUnknownTemperatureInHotAirIsAWarning() throws IOException {
    Path file = Path.of(changed("rate: 6 mm/day", "air: 35 C, humidity: 30 %, wind: 5 mph"));
    Files.writeString(file, Files.readString(file).replace("water: {temperature: 20 C}\n", ""));
    for (String command : List.of("check", "stream")) {
      Run run = Run.of(command, file.toString(), "--format", "json");
      assertEquals(0, run.status(), run.err());
      assertTrue(run.out().contains("water-temperature-assumed"), run.out());
    }
  }

  @Test
  void pumpToBeChosenIsReported() {
    Run run = Run.of("stream", DRY, "--set", "lines.supply.pump=to be chosen");
    assertEquals(2, run.status());
    assertTrue(run.err().contains("to be chosen"), run.err());
  }

  @Test
  void changesAreShown() {
    String change = "lines.intake.skimmer.sill=-200 mm";
    Run run = Run.of("stream", DRY, "--set", change);
    assertTrue(run.out().contains("Changed with --set: " + change), run.out());
    assertFalse(run.out().contains("drawn down to the pump's intake"), run.out());
  }

  @Test
  void everyOtherExampleHasAnAnswer() {
    for (String file :
        new String[] {"small-pond/pond.yaml", "twin-falls/falls.yaml", "fish-pond/pond.yaml"}) {
      Run run = Run.of("stream", FOLDER.resolveSibling(file).toString());
      assertEquals(0, run.status(), run.err());
      assertEquals("", run.err());
    }
  }

  @Test
  void basinWithoutAnAreaCannotBeFollowedInTime() throws IOException {
    String file =
        changed(
            """
                shape:
                  - {level: -0.75 m, area: 15.8 m2}
                  - {level: 0.075 m, area: 15.8 m2}
            """,
            "");
    assertEquals(0, Run.of("stream", file).status());
    Run run = Run.of("stream", file, "--times");
    assertEquals(2, run.status());
    assertTrue(run.err().contains("area is needed"), run.err());
  }
}
