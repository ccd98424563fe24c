package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines that lead round in a ring. */
class RingsTest {
  private static final String RING =
      """
      points:
        pond: {kind: basin, level: 0 m}
        a: {kind: tee, elevation: 0 m}
        b: {kind: tee, elevation: 0 m}
        fall: {kind: fall, crest: 1 m, width: 0.5 m}
      lines:
        supply: {from: pond, to: a, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{pump: p}, {gauge: {name: G1, elevation: 0 m}}, {run: 2 m}]}
        one: {from: a, to: b, pipe: {inside: 50 mm, roughness: 0.01 mm}, parts: [{run: 5 m}]}
        other: {from: b, to: a, pipe: {inside: 50 mm, roughness: 0.01 mm}, parts: [{run: 5 m}]}
        up: {from: b, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [%s{run: 2 m}]}
      pumps:
        p: {points: [{flow: 0 L/s, head: 4 m}, {flow: 4 L/s, head: 0 m}]}
      """;

  @TempDir private Path folder;

  /**
   * One valve downstream of the ring stops the pump, and the gauge then shows its shut-off head.
   */
  @Test
  void theValveBehindARingShutsThePumpIn() {
    MeasuredRun run = solve("{valve: {type: ball, open: 100 %}}, ");
    assertEquals("", run.err());
    assertEquals(0, run.status());
    assertTrue(run.out().contains("5.7 psi"), run.out()); // 4 m of water
    assertTrue(run.out().contains("valve of \"up\" shut"), run.out());
  }

  @Test
  void withoutAValveNothingStopsThePump() {
    MeasuredRun run = solve("");
    assertEquals(0, run.status());
    assertFalse(run.out().contains("valve of \"up\" shut"), run.out());
  }

  private MeasuredRun solve(String valve) {
    return MeasuredRun.of("solve", Scratch.file(folder, RING.formatted(valve)));
  }
}
