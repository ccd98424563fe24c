package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What a technician suspects first. The readings are those of the job solved with the fault written
 * into its file: another size of pipe, another angle of a handle; the inference knows neither.
 */
class FirstSuspectsTest {
  @TempDir private Path folder;

  /** A US job: under 2 in flexible PVC lies 1-1/2 in, not 50 mm; fittings and ends go with it. */
  @Test
  void aWholeLineOneSizeSmallerIsFound() throws IOException {
    Path job = folder.resolve("fall.yaml");
    Files.createDirectories(folder.resolve("pumps"));
    Files.copy(Path.of("../examples/weak-fall/pumps/P-400.csv"), folder.resolve("pumps/P-400.csv"));
    Files.writeString(
        job,
        Files.readString(Path.of(WeakCall.JOB))
            .replace("material: PVC schedule 40, size: 2 in", "material: flexible PVC, size: 2 in")
            .replace("      - run: 84 ft\n", "      - run: 50 ft\n      - run: 34 ft\n"));
    JsonNode answer =
        InventedCall.to(job.toString(), folder, "lines.supply.pipe.size=1-1/2 in")
            .flow("fall")
            .crestHead("fall")
            .gauge("supply", "G1")
            .gauge("supply", "G2")
            .power("supply")
            .sign("always")
            .json();
    assertEquals("pipe smaller than drawn at supply", InventedCall.first(answer));
    assertTrue(answer.get("causes").get(0).get("part").isNull(), "the whole line is one cause");
    assertTrue(answer.get("causes").get(0).get("probability").asDouble() > 0.5, answer.toString());
  }

  /** The valve of the lower fall, filed 36° from open, is found wide open: the upper is weak. */
  @Test
  void aBalancingValveOpenedWideIsFound() throws IOException {
    Path job = folder.resolve("falls.yaml");
    Files.createDirectories(folder.resolve("pumps"));
    for (String pump : new String[] {"P-400", "P-180", "P-600"}) {
      String sheet = "pumps/" + pump + ".csv";
      Files.copy(Path.of("../examples/twin-falls").resolve(sheet), folder.resolve(sheet));
    }
    Files.writeString(
        job,
        Files.readString(Path.of("../examples/twin-falls/ball-valves.yaml"))
            .replaceFirst("open: 100 %, adjustable", "open: 60 %, adjustable"));
    InventedCall call =
        InventedCall.to(job.toString(), folder, "lines.low.valve.open=100 %")
            .flow("low fall")
            .flow("high fall")
            .gauge("supply", "G1");
    JsonNode answer = call.json();
    assertEquals("valve not where the file says at low", InventedCall.first(answer));
    assertTrue(answer.get("causes").get(0).get("size").asDouble() > 0.7, answer.toString());
    String text = call.ask().flat();
    assertTrue(text.contains("set it back to 36\u00b0 from open"), text);
    assertFalse(text.contains("Open it wide"), text);
  }

  /** A hose kinks, glued rigid pipe does not. */
  @Test
  void onlySoftPipeKinks() {
    String rigid = WeakCall.about(WeakCall.JOB, "--causes").out();
    String soft =
        WeakCall.about(WeakCall.JOB, "--causes", "--set", "lines.supply.pipe.material=flexible PVC")
            .out();
    assertFalse(rigid.contains("  hose kinked  "), rigid);
    assertTrue(soft.contains("  hose kinked  "), soft);
  }
}
