package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * A drain left open just after the pump. What would be read is worked out here, apart from the
 * program: a pump whose head falls on a straight line, an orifice q = c √h, a line that takes
 * (q/q1)² m, a broad stone crest with Q = 1.60 b h^1.5. With the valve shut all the pump gives goes
 * through the drain.
 */
class OpenDrainTest {
  private static final double SHUT_OFF_M = 8;
  private static final double RUNS_OUT_M3_PER_S = 0.006;
  private static final double LINE_AT_ONE_METRE = 0.0022;
  private static final double CREST_M = 1.5;
  private static final double WIDTH_M = 0.6;
  private static final double BORE_M = 0.052;
  private static final double G = 9.80665;

  /** m³/s at one metre: some two fifths of what the pump moves. */
  private static final double DRAIN = 0.0008;

  @TempDir private Path folder;

  private Path job() throws IOException {
    return Files.writeString(
        folder.resolve("job.yaml"),
        """
        rillwright: 1
        water: {density: 1000 kg/m3, viscosity: 1.0e-6 m2/s}
        points:
          pond: {kind: basin, level: 0 m}
          fall: {kind: fall, crest: 1.5 m, width: 0.6 m, lip: stone}
        lines:
          supply:
            from: pond
            to: fall
            exit: {k: 0}
            parts:
              - pump: sheet
              - gauge: {name: G1, elevation: 0 m, inside: 52 mm}
              - valve: {k: 0, inside: 52 mm}
              - loss: {flow: 2.2 L/s, head: 1 m, exponent: 2}
        pumps:
          sheet:
            points:
              - {flow: 0 L/s, head: 8 m, power: 200 W}
              - {flow: 6 L/s, head: 0 m, power: 320 W}
        """);
  }

  /** The head after the pump at which it gives what the drain and the line take. */
  private static double headWith(DoubleUnaryOperator taken) {
    double low = 0;
    double high = SHUT_OFF_M;
    for (int i = 0; i < 200; i++) {
      double head = (low + high) / 2;
      double given = RUNS_OUT_M3_PER_S * (1 - head / SHUT_OFF_M);
      if (given > taken.applyAsDouble(head)) {
        low = head;
      } else {
        high = head;
      }
    }
    return low;
  }

  private static double throughDrain(double headM) {
    return DRAIN * Math.sqrt(headM);
  }

  /** What the line passes at a head: (q/q1)² and the head over the crest make up the rest. */
  private static double overFall(double headM) {
    double low = 0;
    double high = RUNS_OUT_M3_PER_S;
    for (int i = 0; i < 200; i++) {
      double flow = (low + high) / 2;
      double needed =
          CREST_M
              + Math.pow(flow / LINE_AT_ONE_METRE, 2)
              + Math.pow(flow / (1.60 * WIDTH_M), 2.0 / 3);
      if (needed < headM) {
        low = flow;
      } else {
        high = flow;
      }
    }
    return low;
  }

  private static String visit(double flow, double running, String more) {
    return String.format(
        Locale.ROOT,
        """
        readings:
          - {at: fall, flow: %.9f m3/s, within: 5 %%}
          - {gauge: G1, pressure: %.5f kPa, within: 1.7 kPa}
        %s
        """,
        flow,
        running,
        more);
  }

  private static double gaugeKpa(double headM, double flow) {
    double speed = flow / (Math.PI / 4 * BORE_M * BORE_M);
    return G * (headM - speed * speed / (2 * G));
  }

  @Test
  void keepsItsCauseAfterTheTestWithTheValveShut() throws IOException {
    double running = headWith(head -> throughDrain(head) + overFall(head));
    double flow = overFall(running);
    double healthy = overFall(headWith(OpenDrainTest::overFall));
    assertTrue(flow < 0.85 * healthy, "it is weak: " + flow + " of " + healthy);
    double shut = headWith(OpenDrainTest::throughDrain);
    String test =
        String.format(
            Locale.ROOT,
            "  - {gauge: G1, pressure: %.5f kPa, within: 1.7 kPa, when: valve shut, valve: supply}",
            gaugeKpa(shut, 0));
    Path job = job();
    Path before = folder.resolve("before.yaml");
    Path after = folder.resolve("after.yaml");
    Files.writeString(before, visit(flow, gaugeKpa(running, flow), ""));
    Files.writeString(after, visit(flow, gaugeKpa(running, flow), test));

    JsonNode first = ask(job, before);
    JsonNode second = ask(job, after);
    double likely = InventedCall.probability(first, "bypass open", "supply");
    double kept = InventedCall.probability(second, "bypass open", "supply");
    assertTrue(likely > 0.05, first.get("causes").toString());
    assertEquals("bypass open at supply", InventedCall.first(second));
    assertTrue(kept > 0.5 && kept > likely, second.get("causes").toString());
    double predicted = second.get("causes").get(0).get("predicted").get(2).asDouble();
    assertEquals(1000 * gaugeKpa(shut, 0), predicted, 0.02 * predicted);
  }

  private static JsonNode ask(Path job, Path visit) {
    return WeakCall.about(job.toString(), "--readings", visit.toString(), "--format", "json")
        .json();
  }
}
