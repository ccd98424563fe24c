package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * Who calls: at a fall, at an outlet, about a return to the pond; and when nothing fits that
 * anybody would call about, slight faults. Readings are those of the job solved as it was found.
 */
class WhoseComplaintTest {
  private static final String JOB =
      """
      rillwright: 1
      points:
        pond: {kind: basin, level: 0 m}
        split: {kind: tee, elevation: 0 m}
        fall: {kind: fall, crest: 1.2 m, width: 0.6 m, lip: stone}
        spout: {kind: outlet, elevation: 1 m}
        bay: {kind: basin, level: 0 m}
      lines:
        supply:
          from: pond
          to: split
          pipe: {inside: 52 mm, roughness: 0.01 mm}
          parts:
            - pump: sheet
            - gauge: {name: G1, elevation: 0 m}
            - check valve: {k: 2, cracking head: 0 m}
            - run: 4 m
        up: {from: split, to: fall, pipe: {inside: 52 mm, roughness: 0.01 mm}, parts: [{run: 8 m}]}
        side:
          from: split
          to: spout
          pipe: {inside: 25 mm, roughness: 0.01 mm}
          parts: [{valve: {type: ball, open: 100 %}}, {run: 3 m}]
        stir:
          from: split
          to: bay
          pipe: {inside: 25 mm, roughness: 0.01 mm}
          parts: [{valve: {type: ball, open: 60 %}}, {run: 6 m}]
      pumps:
        sheet:
          points:
            - {flow: 0 L/s, head: 7.2 m, power: 250 W}
            - {flow: 3.0 L/s, head: 5.05 m, power: 385 W}
            - {flow: 5.2 L/s, head: 0 m, power: 410 W}
      """;

  @TempDir private Path folder;

  private String job() throws IOException {
    return Files.writeString(folder.resolve("job.yaml"), JOB).toString();
  }

  @Test
  void anOutletThatLostATenthIsACall() throws IOException {
    JsonNode answer =
        InventedCall.to(job(), folder, "lines.side.valve.open=50 %")
            .flow("fall")
            .flow("spout")
            .gauge("supply", "G1")
            .json();
    double valve = InventedCall.probability(answer, "valve not where the file says", "side");
    double fouled = InventedCall.probability(answer, "pipe fouled", "side");
    assertTrue(valve > 0.1 && valve + fouled > 0.6, answer.get("causes").toString());
    assertFalse(answer.get("slightIncluded").asBoolean());
  }

  @Test
  void aReturnThatLostATenthIsACall() throws IOException {
    InventedCall call = InventedCall.to(job(), folder, "lines.stir.valve.open=40 %");
    double flow = call.found().get("lines").get("stir").get("flowM3PerS").asDouble();
    JsonNode answer =
        call.flow("fall")
            .flow("spout")
            .reading("line: stir, flow: %.9f m3/s, within: 5 %%", flow)
            .json();
    double valve = InventedCall.probability(answer, "valve not where the file says", "stir");
    double fouled = InventedCall.probability(answer, "pipe fouled", "stir");
    assertTrue(valve > 0.1 && valve + fouled > 0.6, answer.get("causes").toString());
    assertFalse(answer.get("slightIncluded").asBoolean());
  }

  /** A pump at 98 % of its speed takes less than a tenth off everything. */
  @Test
  void slightFaultsCountWhenNothingElseFits() throws IOException {
    InventedCall call = InventedCall.to(WeakCall.JOB, folder, "lines.supply.pump.speed=98 %");
    double flow = call.found().get("points").get("fall").get("flowM3PerS").asDouble();
    call.reading("at: fall, flow: %.9f m3/s, within: 0.2 %%", flow)
        .reading("pump: supply, power: %.4f W, within: 0.2 %%", call.powerW("supply"));
    JsonNode answer = call.json();
    assertTrue(answer.get("slightIncluded").asBoolean(), answer.get("causes").toString());
    assertNotEquals("none of these", answer.get("causes").get(0).get("cause").asString());
    assertTrue(call.ask().flat().contains("slight faults count too"), call.ask().out());
  }
}
