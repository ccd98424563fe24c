package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class OddsCommandTest {
  private static final String EXAMPLE =
      Path.of("..", "examples", "old-falls", "falls.yaml").toString();
  private static final String CERTAIN =
      Path.of("..", "examples", "small-pond", "pond.yaml").toString();

  /**
   * A tank over an outlet in air; all the loss is quadratic, so that flow = 10 L/s · √(level/1 m).
   */
  private static final String TANK =
      """
      rillwright: 1
      points:
        tank: {kind: basin, level: 0.6 m .. 1.4 m}
        spout: {kind: outlet, elevation: 0 m, target: 9.5 L/s}
      lines:
        pipe: {from: tank, to: spout, parts: [loss: {flow: 10 L/s, head: 1 m, exponent: 2}]}
      """;

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("project.yaml"), text);
  }

  private static JsonNode json(String... arguments) {
    Run run = Run.of(arguments);
    assertEquals(0, run.status(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void rangesThatDoNotChangeFlowsAreNamed() throws IOException {
    String text =
        """
        points:
          pond: {kind: basin, level: 0 m, area: 20 m2}
          tank: {kind: basin, level: 1 m, area: 20 m2}
          spout: {kind: outlet, elevation: 0 m}
        lines:
          pipe: {from: tank, to: spout, parts: [loss: {flow: 10 L/s, head: 1 m, exponent: 2}]}
        streams:
          home:
            from: spout
            to: pond
            reaches:
              - {length: 12 ft ± 3 ft, drop: 1 ft, width: 24 in, bed: {n: 0.03 .. 0.06}}
        evaporation: {rate: 0.1 in/day .. 0.4 in/day}
        """;
    Path project = file(text);
    Run run = Run.of("odds", project.toString());
    assertEquals(2, run.status());
    assertTrue(
        run.err()
            .startsWith(
                project
                    + ":12:18: odds reports the chances of flows and does not vary"
                    + " streams.home.reaches.1.length (12 ft ± 3 ft), streams.home.reaches.1.bed.n"
                    + " (0.03 .. 0.06), evaporation.rate (0.1 in/day .. 0.4 in/day): it does not"
                    + " change what the falls get while the pond is kept at its level; write a"
                    + " tolerance or a range in points, lines, pumps or water, for example"),
        run.err());
  }

  @Test
  void oddsOfAnUncertainLevelAreThoseOfTheClosedForm() throws IOException {
    JsonNode odds = json("odds", file(TANK).toString(), "--format", "json");

    assertEquals(10_000, odds.get("samples").intValue());
    assertEquals(1, odds.get("seed").intValue());
    JsonNode spout = odds.get("falls").get("spout");
    // quantiles of the level, 0.64, 1 and 1.36 m, put through the square root
    assertEquals(0.008, spout.get("p5M3PerS").doubleValue(), 2e-6);
    assertEquals(0.010, spout.get("p50M3PerS").doubleValue(), 2e-6);
    assertEquals(0.01 * Math.sqrt(1.36), spout.get("p95M3PerS").doubleValue(), 2e-6);
    // 9.5 L/s less a thousandth, which is not missed, above a level of 0.999² · 0.9025 m
    double least = 0.999 * 0.999 * 0.9025;
    assertEquals((1.4 - least) / 0.8, spout.get("chance").doubleValue(), 2e-4);
    assertEquals("points.tank.level", odds.get("drivers").get(0).get("quantity").stringValue());
    assertEquals(1, odds.get("drivers").get(0).get("varianceShare").doubleValue(), 1e-4);
  }

  @Test
  void theSameBytesComeFromOneThreadAndFromTwo() {
    String[] command = {"odds", EXAMPLE, "--samples", "300", "--seed", "5", "--format", "json"};
    String one = Run.of(with(command, "--threads", "1")).out();
    String two = Run.of(with(command, "--threads", "2")).out();
    String other = Run.of(with(command, "--seed", "6")).out();

    assertTrue(one.contains("\"seed\": 5"), one);
    assertEquals(one, two);
    assertTrue(!one.equals(other), "another seed draws other samples");
  }

  private static String[] with(String[] command, String option, String value) {
    List<String> words = new java.util.ArrayList<>(List.of(command));
    int at = words.indexOf(option);
    if (at >= 0) {
      words.set(at + 1, value);
    } else {
      words.addAll(List.of(option, value));
    }
    return words.toArray(new String[0]);
  }

  /** Each address, given to --set with what was written there, changes nothing. */
  @Test
  void driversAreAddressedAsChangesAre() {
    JsonNode odds = json("odds", EXAMPLE, "--samples", "100", "--format", "json");
    assertEquals(13, odds.get("drivers").size());
    JsonNode first = odds.get("drivers").get(0);
    JsonNode settled =
        json(
            "odds",
            EXAMPLE,
            "--samples",
            "100",
            "--format",
            "json",
            "--set",
            first.get("quantity").stringValue() + "=70 %");
    assertEquals(12, settled.get("drivers").size());
    for (JsonNode driver : settled.get("drivers")) {
      assertTrue(!driver.get("quantity").equals(first.get("quantity")), driver.toString());
    }
  }

  @Test
  void aPictureIsWrittenWhereItIsAskedFor() throws IOException {
    Path svg = folder.resolve("odds.svg");
    Run run = Run.of("odds", EXAMPLE, "--samples", "100", "--chart", svg.toString());
    assertEquals(0, run.status(), run.err());
    String picture = Files.readString(svg);
    for (String words : List.of(">low fall<", ">high fall<", ">valve in low, opening<")) {
      assertTrue(picture.contains(words), words);
    }
    assertEquals(2, Run.of("odds", EXAMPLE, "--chart", "odds.txt").status());
  }

  @Test
  void withoutAnythingUncertainItTellsWhatToWrite() {
    Run run = Run.of("odds", CERTAIN);
    assertEquals(2, run.status());
    assertEquals("", run.out());
    assertTrue(
        run.err().startsWith(CERTAIN + ": every value in the network is exact here"), run.err());
    assertTrue(run.err().contains("\"run: 38 ft ± 4 ft\""), run.err());
  }

  @Test
  void aRangeThatHasNoSayIsNamed() throws IOException {
    String text = TANK + "running: {price: 1 USD/kWh, hours: 8 h/day .. 24 h/day}\n";
    Run run = Run.of("odds", file(text).toString(), "--samples", "100");
    assertEquals(0, run.status(), run.err());
    assertTrue(
        run.out()
            .contains(
                "\"running: hours\" (8 h/day .. 24 h/day) does not affect the flows and is left out."),
        run.out());
  }

  @Test
  void starvedSamplesAreCountedAndReported() throws IOException {
    String text =
        """
        rillwright: 1
        points:
          pond: {kind: basin, level: 0 in}
          chamber: {kind: chamber, floor: -30 in, intake: -20 in}
          fall: {kind: fall, crest: 3 ft, width: 20 in, target: 1000 gph}
        lines:
          intake: {from: pond, to: chamber, parts: [skimmer: {width: 8 in, sill: -2 in, clogged: 0 % .. 95 %}]}
          supply: {from: chamber, to: fall, parts: [pump: p, run: {length: 20 ft, inside: 1.6 in, roughness: 0.01 mm}]}
        pumps: {p: {points: [{flow: 0 gph, head: 15 ft}, {flow: 3000 gph, head: 3 ft}]}}
        """;
    Path file = file(text);
    JsonNode odds = json("odds", file.toString(), "--samples", "400", "--format", "json");
    int starved = odds.get("tally").get("starved").intValue();
    assertTrue(starved > 40 && starved < 360, "starved: " + starved);
    Run shown = Run.of("odds", file.toString(), "--samples", "400");
    assertTrue(shown.out().contains("! " + starved + " of 400 samples"), shown.out());
    assertTrue(shown.out().contains("a chamber drawn down to its intake"), shown.out());
  }

  @Test
  void valuesThatContradictEachOtherAreCountedAndReported() throws IOException {
    String text =
        TANK.replace("tank: {", "box: {kind: chamber, floor: 0 m, intake: -1 m .. 3 m}\n  tank: {");
    String linked =
        text.replace(
            "  pipe: {from: tank, to: spout,",
            "  way: {from: tank, to: box, parts: [loss: {flow: 10 L/s, head: 1 mm, exponent: 2}]}\n"
                + "  pipe: {from: box, to: spout,");
    Run run = Run.of("odds", file(linked).toString(), "--samples", "400");
    assertEquals(0, run.status(), run.err());
    assertTrue(
        run.out().contains("! 100 of 400 samples (25 %) have values that contradict"), run.out());
    assertTrue(run.out().contains("intake"), run.out());
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({"--samples, 99", "--samples, 1000001", "--threads, 0", "--seed, x"})
  void anOptionOutOfRangeIsRefused(String option, String value) {
    Run run = Run.of("odds", EXAMPLE, option, value);
    assertEquals(2, run.status());
    assertTrue(run.err().contains(option), run.err());
  }

  @Test
  void aPumpStillToBeChosenIsRefused() {
    Run run = Run.of("odds", EXAMPLE, "--set", "lines.supply.pump=to be chosen");
    assertEquals(2, run.status());
    assertTrue(run.err().contains("still to be chosen"), run.err());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"solves a second", "on 2 threads"})
  void theSpeedIsReportedApartFromTheAnswer(String words) {
    Run run = Run.of("odds", EXAMPLE, "--samples", "100", "--threads", "2");
    assertTrue(run.err().contains(words), run.err());
    assertTrue(!run.out().contains(words), run.out());
    assertTrue(!run.err().contains("\r"), "no bar without a terminal");
  }
}
