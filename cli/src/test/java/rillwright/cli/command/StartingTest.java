package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/**
 * A pump that must bring water over a hump of 6 m to a fall at 2 m: its shut-off head of 5 m would
 * carry the siphon, and does not start it. The head that it takes to start is 6 m, the hump above
 * the pond.
 */
class StartingTest extends ScratchSupplier {

  private String job(String pump, String highPoint) throws IOException {
    return job(pump, highPoint, "10 m");
  }

  private String job(String pump, String highPoint, String length) throws IOException {
    return file(
        """
        rillwright: 1
        title: Over a hump
        show: metric
        points:
          pond: {kind: basin, level: 0 m}
          fall: {kind: fall, crest: 2 m, width: 500 mm, lip: stone, target: 1 L/s}
        lines:
          supply:
            from: pond
            to: fall
            pipe: {inside: 50 mm, roughness: 0.01 mm}
            parts:
              - pump: PUMP
              - valve: {type: ball, open: 100 %, adjustable: yes}
              - run: LENGTH
              - high point: HIGH
              - run: 4 m
        pumps:
          weak:
            points:
              - {flow: 0 L/s, head: 5 m, power: 150 W}
              - {flow: 1.6 L/s, head: 4.3 m, power: 200 W}
              - {flow: 3.9 L/s, head: 0 m, power: 234 W}
        conditions:
          lower: {lines: {supply: {high point: {elevation: 3 m}}}}
        readings:
          - {at: fall, flow: 0.7 L/s, within: 10 %}
        """
            .replace("LENGTH", length)
            .replace("PUMP", pump)
            .replace("HIGH", highPoint));
  }

  @Test
  void solveSaysThatItDoesNotStart() throws IOException {
    assertEquals(1, Run.of("solve", job("weak", "6 m"), "--strict").status());
    Run run = Run.of("solve", job("weak", "6 m"));
    Run.assertReported(
        run.flat(), "\"supply\" does not start", "more than 6", "1 m lower", "primed: yes");
    Run json = Run.of("solve", job("weak", "6 m"), "--format", "json");
    assertTrue(json.out().contains("\"code\": \"cannot-start\""), json.out());
    assertTrue(json.out().contains("\"open\": false"), json.out());
  }

  @Test
  void primedItRuns() throws IOException {
    Run run = Run.of("solve", job("weak", "{elevation: 6 m, primed: yes}"), "--strict");
    assertEquals(0, run.status(), run.out());
    Run.assertReported(run.flat(), "Prime it again after every stop");
  }

  @Test
  void pumpsRanksItBehindAllThatRun() throws IOException {
    sheet("weak.csv", SHEET);
    sheet("strong.csv", SHEET.replace("0,5,", "0,7,"));
    sheet("small.csv", "flow [L/s],head [m],power [W]\n0,6.5,150\n0.3,4,160\n0.5,0,170\n");
    Run run = Run.of("pumps", job("weak", "6 m"), "--from", list.toString());
    assertTrue(run.out().contains("cannot start"), run.out());
    int weak = run.out().lastIndexOf("cannot start");
    int small = run.out().lastIndexOf("falls short");
    assertTrue(small > 0 && small < weak, run.out());
    Run.assertReported(run.flat(), "less than the high point of \"supply\"");
  }

  @Test
  void pipesOfAnySizeDoNotStartIt() throws IOException {
    String file =
        file(
            Files.readString(Path.of(job("weak", "6 m")))
                .replace(
                    "inside: 50 mm, roughness: 0.01 mm", "material: PVC-U PN 10, size: 50 mm"));
    JsonNode sizes = Run.json("pipes", file, "--line", "supply", "--sizes", "40 mm, 110 mm");
    assertEquals(2, sizes.get("candidates").size());
    for (JsonNode size : sizes.get("candidates")) {
      assertEquals("cannot-start", size.get("verdictCode").asString());
      assertEquals(0, size.get("fallsM3PerS").get("fall").asDouble());
    }
  }

  @Test
  void balanceSaysThatItDoesNotStart() throws IOException {
    Run run = Run.of("balance", job("weak", "6 m"));
    Run.assertReported(run.flat(), "\"supply\" does not start", "more than 6");
    assertFalse(run.out().contains("would not help"), run.out());
  }

  @Test
  void oddsOfAPumpThatNeverStartsAreNone() throws IOException {
    Run run = Run.of("odds", job("weak", "5.2 m .. 7 m"), "--samples", "100");
    assertTrue(
        run.out().contains("fall  3.6 m3/h     0 %        dry     dry          dry"), run.out());
  }

  @Test
  void oddsCountTheSamplesInWhichItStarts() throws IOException {
    Run run =
        Run.of("odds", job("weak", "{elevation: 4 m .. 6 m, primed: yes}"), "--samples", "100");
    assertTrue(run.out().contains("100 %"), "primed it runs in all of them: " + run.out());
  }

  @Test
  void aConditionThatLowersTheHighPointStartsIt() throws IOException {
    JsonNode conditions = Run.json("solve", job("weak", "6 m"), "--conditions").get("conditions");
    assertEquals(0, flow(conditions.get(0)));
    assertTrue(flow(conditions.get(1)) > 1e-3, conditions.toString());
  }

  private static double flow(JsonNode condition) {
    return condition.get("solve").get("points").get("fall").get("flowM3PerS").asDouble();
  }

  @Test
  void chartShowsThePumpAtNoFlowBelowTheSystemCurve() throws IOException {
    JsonNode chart = Run.json("chart", job("weak", "6 m"));
    assertEquals(0, chart.get("operatingPoint").get("flowM3PerS").asDouble());
    assertEquals(5, chart.get("operatingPoint").get("headM").asDouble(), 1e-9);
    assertEquals(6, chart.get("systemCurve").get(0).get("headM").asDouble(), 1e-6);
  }

  @Test
  void weakSaysThatTheJobAsWrittenDoesNotStart() throws IOException {
    Run run = Run.of("weak", job("weak", "6 m"));
    assertEquals(2, run.status());
    Run.assertReported(run.err(), "nothing flows", "does not start", "more than 6");
  }

  @ParameterizedTest
  @ValueSource(strings = {"weak", "to be chosen"})
  void dutyAsksForTheShutOffHead(String pump) throws IOException {
    Run run = Run.of("duty", job(pump, "6 m"), "--format", "json");
    Matcher least = Pattern.compile("\"leastShutOffM\": ([0-9.]+)").matcher(run.out());
    assertTrue(least.find(), run.out());
    assertEquals(6, Double.parseDouble(least.group(1)), 1e-9);
    Run.assertReported(
        Run.of("duty", job(pump, "6 m")).flat(), "shut-off head must be more than 6");
  }

  @Test
  void dutyOfAVentedLineIsThatOfItsVentedEnd() throws IOException {
    Matcher vented = head(job("weak", "{elevation: 6 m, vent: yes}"));
    Matcher full = head(job("weak", "{elevation: 6 m, primed: yes}"));
    assertTrue(vented.find() && full.find());
    double area = Math.PI / 4 * 0.05 * 0.05;
    double velocityHead = Math.pow(1e-3 / area, 2) / (2 * 9.80665);
    double friction = Double.parseDouble(vented.group(1)) - 6 - velocityHead;
    assertTrue(friction > 0 && friction < 0.1, vented.group());
    assertTrue(Double.parseDouble(full.group(1)) < 2.3, full.group());
  }

  private static Matcher head(String file) {
    Run run = Run.of("duty", file, "--format", "json");
    return Pattern.compile("\"headM\": ([0-9.]+)").matcher(run.out());
  }

  @Test
  void aVentAndPrimingTogetherAreAFault() throws IOException {
    Run run = Run.of("check", job("weak", "{elevation: 6 m, primed: yes, vent: yes}"));
    assertEquals(2, run.status());
    Run.assertReported(run.err(), "pond.yaml", "keep one of the two");
  }

  @Test
  void noAdviceIsAVentWhereThereIsSuction() throws IOException {
    for (String high : new String[] {"4 m", "{elevation: 4 m, falls: 30°}", "3 m", "2.5 m"}) {
      String shown = Run.of("solve", job("weak", high)).flat();
      assertFalse(shown.contains("put a vent"), shown);
      assertTrue(
          shown.contains("valve for priming and purging by hand that is closed while it runs"),
          shown);
    }
  }
}
