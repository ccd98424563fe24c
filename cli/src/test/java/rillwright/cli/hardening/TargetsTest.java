package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.minor.ValveTravel;
import tools.jackson.databind.JsonNode;

/** One definition of a missed target: more than a thousandth below it, at any fall or outlet. */
class TargetsTest {
  private static final String TWO_WAYS =
      """
      points:
        pond: {kind: basin, level: 0 m}
        split: {kind: tee, elevation: 0 m}
        fall: {kind: fall, crest: 1 m, width: 0.5 m%s}
        under: {kind: outlet, elevation: %s, level: %s%s}
      lines:
        supply: {from: pond, to: split, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{pump: p}, {run: 2 m}]}
        up: {from: split, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{valve: {k: 0.1, adjustable: yes}}, {run: %s}]}
        beside: {from: split, to: under, pipe: {inside: 20 mm, roughness: 0.01 mm},
          parts: [{valve: {k: 0.1, adjustable: yes}}, {run: 5 m}]}
      pumps:
        p: {points: [{flow: 0 L/s, head: 4 m}, {flow: 4 L/s, head: 0 m}]}
      """;

  @TempDir private Path folder;

  private String project(String ofFall, String level, String ofOutlet, String run) {
    return Scratch.file(folder, TWO_WAYS.formatted(ofFall, level, level, ofOutlet, run));
  }

  /** Of what the fall gets, its target is so much more that it gets this share of it. */
  @ParameterizedTest
  @CsvSource({"1.0001, 0", "0.9995, 0", "0.9985, 1"})
  void everyCommandMissesATargetByTheSame(double share, int missed) {
    String plain = project("", "-1 m", "", "2 m");
    double gets = MeasuredRun.of("solve", plain, "--format", "json").flow("fall");
    String target = String.format(Locale.ROOT, ", target: %.9f L/s", 1000 * gets / share);
    String known = project(target, "-1 m", "", "2 m");
    assertEquals(missed, MeasuredRun.of("solve", known, "--strict").status());
    String wide = project(target, "-1 m", "", "2 m .. 2.000000001 m");
    MeasuredRun odds = MeasuredRun.of("odds", wide, "--samples", "100", "--format", "json");
    assertEquals(1 - missed, odds.json().get("chanceOfAll").asDouble());
  }

  /** An open end under water with a target counts like a fall, in every list. */
  @Test
  void anOutletUnderWaterIsListedAndMissed() {
    String project = project(", target: 1 L/s", "1 m", ", target: 3 L/s", "2 m");
    MeasuredRun balance = MeasuredRun.of("balance", project, "--strict", "--format", "json");
    assertEquals(1, balance.status());
    assertTrue(balance.json().get("falls").has("under"), balance.out());
    assertTrue(MeasuredRun.of("balance", project).out().contains("  under  "));
    assertEquals(1, MeasuredRun.of("solve", project, "--strict").status());
  }

  /**
   * A pump that makes what {@code duty} asks for with the others throttled brings all their target,
   * and none more, be the outlet in air or under water.
   */
  @ParameterizedTest
  @CsvSource({"-1 m", "0.3 m", "2 m"})
  void aPumpThatMakesTheThrottledDutyBringsEveryTarget(String level) {
    String chosen = Scratch.read(project(", target: 1 L/s", level, ", target: 0.5 L/s", "2 m"));
    String planned = Scratch.file(folder, chosen.replace("pump: p}", "pump: to be chosen}"));
    JsonNode duty = MeasuredRun.of("duty", planned, "--format", "json").json().get("throttled");
    assertEquals(0.0015, duty.get("flowM3PerS").asDouble(), 1e-9);
    double head = duty.get("headM").asDouble();
    String made =
        String.format(
            Locale.ROOT,
            "{flow: 0 L/s, head: %.9f m}, {flow: 1.5 L/s, head: %.9f m}, {flow: 3 L/s, head: 0 m}",
            head + 1,
            head);
    String points = chosen.substring(chosen.indexOf("p: {points: [") + "p: {points: [".length());
    String pumped = Scratch.file(folder, chosen.replace(points, made + "]}\n"));
    JsonNode falls =
        MeasuredRun.of("balance", pumped, "--target", "--format", "json").json().get("falls");
    for (String fall : List.of("fall", "under")) {
      double target = falls.get(fall).get("targetM3PerS").asDouble();
      assertEquals(target, falls.get(fall).get("flowM3PerS").asDouble(), 1e-4 * target, fall);
    }
  }

  /** Water that runs in at an outlet without a target misses none. */
  @Test
  void whatHasNoTargetMissesNone() {
    String project = project(", target: 0.5 L/s", "9 m", "", "2 m .. 2.1 m");
    assertTrue(MeasuredRun.of("solve", project, "--format", "json").flow("under") < 0);
    MeasuredRun odds = MeasuredRun.of("odds", project, "--samples", "100", "--format", "json");
    assertEquals(1, odds.json().get("chanceOfAll").asDouble());
    assertEquals(0, MeasuredRun.of("solve", project, "--strict").status());
  }

  /** A valve known by its K alone may have to be shut: it has no K then, and the answer says so. */
  @ParameterizedTest
  @CsvSource({"drain 1", "drain 2"})
  void aValveThatIsToBeShutHasNoLossCoefficient(String line) {
    String pond = "../examples/fish-pond/pond.yaml";
    MeasuredRun json =
        MeasuredRun.of("balance", pond, "--target", "--valves", line, "--format", "json");
    assertEquals("", json.err());
    assertTrue(json.json().get("valves").get(0).get("lossCoefficient").isNull(), json.out());
    String picture = folder.resolve("share.svg").toString();
    MeasuredRun text =
        MeasuredRun.of("balance", pond, "--target", "--valves", line, "--chart", picture);
    assertEquals("", text.err());
    assertTrue(text.out().contains("is to be shut"), text.out());
    assertFalse(Scratch.read(picture).contains("NaN"));
  }

  /** An opening as small as is ever computed, as JSON writes it, may be put back. */
  @Test
  void theLeastOpeningThatIsComputedIsRead() {
    for (ValveTravel travel : ValveTravel.values()) {
      double opening = travel.published().openingAt(1e300);
      String valve = "{type: " + travel.word() + ", open: " + 100 * opening + " %}";
      String wide = Scratch.read(project("", "2 m", "", "2 m"));
      String pond = Scratch.file(folder, wide.replace("{k: 0.1, adjustable: yes}", valve));
      MeasuredRun run = MeasuredRun.of("solve", pond);
      assertEquals(0, run.status(), valve + run.err());
    }
  }
}
