package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Run;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Calls with one fault, read by a meter on a line, by drawdown and from the pond's water down. The
 * readings are those of the job with the fault written into its file, as {@code solve} balances it.
 */
class LargeFlowReadingTest {
  private static final double CHAMBER_M2 = 3 * 0.3048 * 0.3048;
  private static final Set<String> LOSING_WATER =
      Set.of("leak", "stream leak", "bypass open", "water behind the rocks");

  @TempDir private Path folder;
  private String job;

  @BeforeEach
  void asBuilt() throws IOException {
    String text = Files.readString(Path.of(WeakCall.JOB));
    job = text.substring(0, text.indexOf("readings:"));
    Files.createDirectory(folder.resolve("pumps"));
    Files.copy(
        Path.of(WeakCall.JOB).resolveSibling("pumps/P-400.csv"), folder.resolve("pumps/P-400.csv"));
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private JsonNode solved(String... oldAndFaulty) throws IOException {
    String edited = job;
    for (int i = 0; i < oldAndFaulty.length; i += 2) {
      assertTrue(edited.contains(oldAndFaulty[i]), oldAndFaulty[i]);
      edited = edited.replace(oldAndFaulty[i], oldAndFaulty[i + 1]);
    }
    Run run = Run.of("solve", file("fault.yaml", edited), "--format", "json");
    assertEquals(0, run.status(), run.err());
    return JsonMapper.shared().readTree(run.out());
  }

  private JsonNode weak(String... readings) throws IOException {
    String visit = "readings:\n  - " + String.join("\n  - ", readings) + "\n";
    return WeakCall.about(
            file("job.yaml", job), "--readings", file("visit.yaml", visit), "--format", "json")
        .json();
  }

  private static String flow(String where, JsonNode m3PerS) {
    return String.format(Locale.ROOT, "{%s, flow: %.6f m3/s}", where, m3PerS.asDouble());
  }

  private static double chance(JsonNode answer, Set<String> causes) {
    double sum = 0;
    for (JsonNode cause : answer.get("causes")) {
      sum +=
          causes.contains(cause.get("cause").asString()) ? cause.get("probability").asDouble() : 0;
    }
    return sum;
  }

  @Test
  void aMeterAndADrawdownShowThatWaterIsLostBehindThem() throws IOException {
    JsonNode truth =
        solved(
            "points:\n",
            "points:\n  hole: {kind: tee, draw: 1.4 L/s}\n",
            "to: fall\n",
            "to: hole\n",
            "      - run: 84 ft\n",
            "      - run: 42 ft\n",
            "pumps:\n",
            """
              rest:
                from: hole
                to: fall
                pipe: {material: PVC schedule 40, size: 2 in}
                parts: [run: 42 ft]
            pumps:
            """);
    String atFall = flow("at: fall", truth.at("/points/fall/flowM3PerS"));
    double pump = truth.at("/lines/supply/flowM3PerS").asDouble();
    String meter = flow("line: supply", truth.at("/lines/supply/flowM3PerS"));
    double drop = 6 * pump / CHAMBER_M2;
    String drawdown = String.format(Locale.ROOT, "{at: chamber, drops: %.5f m, in: 6 s}", drop);
    double without = chance(weak(atFall), LOSING_WATER);
    assertTrue(without < 0.3, "by the fall alone " + without);
    assertTrue(chance(weak(atFall, meter), LOSING_WATER) > 0.95, meter);
    assertTrue(chance(weak(atFall, drawdown), LOSING_WATER) > 0.95, drawdown);
  }

  @Test
  void theChamberBelowThePondShowsAClogBeforeIt() throws IOException {
    JsonNode truth = solved("exponent: 2}}", "exponent: 2}, clogged: 93 %}");
    double pump = truth.at("/lines/supply/flowM3PerS").asDouble();
    double below = -truth.at("/points/chamber/headM").asDouble();
    JsonNode answer =
        weak(
            flow("line: supply", truth.at("/lines/supply/flowM3PerS")),
            String.format(Locale.ROOT, "{at: chamber, below pond: %.4f m}", below),
            String.format(
                Locale.ROOT, "{at: chamber, drops: %.5f m, in: 6 s}", 6 * pump / CHAMBER_M2));
    assertTrue(chance(answer, Set.of("net clogged", "skimmer clogged")) > 0.95, answer.toString());
    JsonNode readings = answer.get("readings");
    assertEquals(pump, readings.at("/0/flowM3PerS").asDouble(), 1e-6);
    assertEquals(below, readings.at("/1/belowPondM").asDouble(), 1e-4);
    assertEquals(pump, readings.at("/2/drawdownM3PerS").asDouble(), 1e-3 * pump);
    for (JsonNode cause : answer.get("causes")) {
      if (cause.get("cause").asString().equals("net clogged")) {
        List<Double> read = List.of(pump, below, pump);
        for (int i = 0; i < read.size(); i++) {
          assertEquals(read.get(i), cause.get("predicted").get(i).asDouble(), 0.03 * read.get(i));
        }
      }
    }
  }

  private String next(String... oldAndOther) throws IOException {
    String edited = job;
    for (int i = 0; i < oldAndOther.length; i += 2) {
      assertTrue(edited.contains(oldAndOther[i]), oldAndOther[i]);
      edited = edited.replace(oldAndOther[i], oldAndOther[i + 1]);
    }
    return WeakCall.about(file("next.yaml", edited), "--format", "json")
        .json()
        .get("next")
        .toString();
  }

  /**
   * A meter needs pipe of fifteen bores and 0.3 m/s, a drawdown a mouth to hold shut and four
   * seconds for half of what stands over the intake (common practice, no source): 3 ft2 give 13 s,
   * 0.5 ft2 two.
   */
  @Test
  void bothAreProposedWhereTheirInstrumentIsPlausible() throws IOException {
    String meter = "{\"line\":\"supply\",\"flowM3PerS\":null";
    String drawdown = "{\"at\":\"chamber\",\"drawdownM3PerS\":null";
    String both = next();
    assertTrue(both.contains(meter) && both.contains(drawdown), both);
    String small = next("area: 3 ft2", "area: 0.5 ft2", "run: 84 ft", "run: 2 ft");
    assertFalse(small.contains(meter) || small.contains(drawdown), small);
    String open = next("      - skimmer: {width: 16 in, height: 6 in, sill: -3-1/2 in}\n", "");
    assertTrue(open.contains(meter), open);
    assertFalse(open.contains(drawdown), open);
  }
}
