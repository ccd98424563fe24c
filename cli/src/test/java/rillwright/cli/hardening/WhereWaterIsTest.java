package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** What {@code stream} says of where the water is, from its levels and in time. */
class WhereWaterIsTest {
  private static final String PROJECT =
      """
      points:
        pond: {kind: basin, level: 0 m, area: 20 m2}
        tank: {kind: basin, level: -1 m, area: 20 m2}
        split: {kind: tee, elevation: 0 m}
        fall: {kind: fall, crest: 1 m, width: 0.5 m, returns to: %s}
        end: {kind: outlet, elevation: 0.8 m%s}
      lines:
        supply: {from: pond, to: split, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{pump: p}, {run: 2 m}]}
        up: {from: split, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm}, parts: [{run: 2 m}]}
        aside: {from: split, to: end, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{run: 5 m}]}
      pumps:
        p: {points: [{flow: 0 L/s, head: 4 m}, {flow: 4 L/s, head: 0 m}]}
      streams:
        main:
          from: end
          to: pond
          reaches: [{length: 8 m, drop: 0.2 m, width: 60 cm, bed: cobble}]
      """;

  private static final int PROJECTS = Integer.getInteger("rillwright.projects", 24);
  private static final Pattern TRANSIT =
      Pattern.compile("WATER IN TRANSIT *\\n((?: +\\S.*\\n)*? +all .*\\n)");
  private static final Pattern VOLUME = Pattern.compile(" ([\\d,.]+) \\S+$");

  @TempDir private Path folder;

  private MeasuredRun stream(String home, String level, String... more) {
    String[] words = new String[more.length + 2];
    words[0] = "stream";
    words[1] = Scratch.file(folder, PROJECT.formatted(home, level));
    System.arraycopy(more, 0, words, 2, more.length);
    MeasuredRun run = MeasuredRun.of(words);
    assertEquals("", run.err());
    return run;
  }

  /** A pipe that ends in a pool at the same height feeds the stream as one that ends in air. */
  @Test
  void aStreamFromAnOutletUnderWaterIsInTransitToo() {
    JsonNode air = stream("pond", "", "--format", "json").json();
    JsonNode under = stream("pond", ", level: 0.8 m", "--format", "json").json();
    double transit = air.get("transit").get("streamsM3").asDouble();
    assertTrue(transit > 0.1, transit + " m³");
    assertEquals(transit, under.get("transit").get("streamsM3").asDouble(), 1e-9);
  }

  /** Once all is steady in time, the pond stands where the water in transit says. */
  @ParameterizedTest
  @ValueSource(strings = {"", ", level: 0.8 m"})
  void theRunningLevelIsThatInTime(String level) {
    JsonNode answer = stream("pond", level, "--times", "--format", "json").json();
    double running = answer.get("basins").get("pond").get("runningLevelM").asDouble();
    JsonNode steady = null;
    for (JsonNode moment : answer.get("course").get("moments")) {
      steady = moment.get("pumping").asBoolean() ? moment : steady;
    }
    assertEquals(running, steady.get("levelM").get("pond").asDouble(), 1e-3);
  }

  @Test
  void aBasinThatIsNotInBalanceHasNoRunningLevel() {
    MeasuredRun json = stream("tank", "", "--format", "json");
    assertTrue(json.out().contains("basin-not-in-balance"), json.out());
    assertTrue(json.json().get("basins").get("pond").get("runningLevelM").isNull(), json.out());
    MeasuredRun text = stream("tank", "", "--times");
    assertFalse(text.out().contains("levels are steady after"), text.out());
    assertFalse(text.out().contains(", steady"), text.out());
  }

  /** An area alone tells no volume, however little the level has risen above where it was taken. */
  @Test
  void withoutADepthNothingTurnsOver() {
    String falls = "../examples/twin-falls/falls.yaml";
    JsonNode answer = MeasuredRun.of("stream", falls, "--format", "json").json();
    assertEquals(0, answer.get("running").get("turnoversPerDay").size());
  }

  /** As shown: parts are rounded so that they add up to what all of them are rounded to. */
  @Test
  void waterInTransitAddsUpAsShown() {
    int shown = 0;
    for (long seed = 0; seed < PROJECTS; seed++) {
      String file = Scratch.file(folder, ProjectTree.yaml(RandomProject.of(seed)));
      String out = MeasuredRun.of("stream", file).out();
      Matcher table = TRANSIT.matcher(out);
      if (table.find()) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal all = BigDecimal.ZERO;
        for (String row : table.group(1).lines().toList()) {
          Matcher volume = VOLUME.matcher(row);
          assertTrue(volume.find(), row);
          BigDecimal amount = new BigDecimal(volume.group(1).replace(",", ""));
          sum = row.strip().startsWith("all ") ? sum : sum.add(amount);
          all = amount;
        }
        assertEquals(0, sum.compareTo(all), "seed " + seed + "\n" + table.group());
        shown++;
      }
    }
    assertTrue(shown > PROJECTS / 6, shown + " shown");
  }
}
