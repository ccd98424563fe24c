package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.network.HighPoint;

/** What people of the trade write is read, or answered with what it is called here. */
class TradeWritingTest {
  private static String line(String part) {
    return ProjectText.POINTS
        + "  line:\n"
        + "    from: pond\n"
        + "    to: low\n"
        + "    pipe: {material: flexible PVC, size: 2\"}\n"
        + "    parts:\n"
        + "      - run: 5' 6\"\n"
        + "      - "
        + part
        + "\n";
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "fitting: {type: bend 45} | ; did you mean \"elbow 45\"?",
        "fitting: {type: 90 bend} | ; did you mean \"elbow 90\" or",
        "fitting: {type: hose tail} | ; did you mean \"barbed adapter\"?",
        "fitting: {type: tank connector} | ; did you mean \"bulkhead\"?",
        "fitting: {type: slide valve} | ; did you mean \"knife gate open\"?",
        "valve: {type: slide valve, open: 50 %} | ; did you mean \"gate\"?",
        "check valve: {type: flap} | ; did you mean \"swing\"?",
        "run: {length: 1 m, material: uPVC, size: 63 mm} | ; did you mean \"PVC-U PN 10\"?",
        "fitting: tee branch | found \"tee branch\"; write \"fitting: {type: tee branch}\"",
        "fitting: bend 45 | ; write \"fitting: {type: elbow 45}\"",
        "fitting: 0.5 | ; write \"fitting: {k: 0.5}\"",
        "valve: slide valve | ; write \"valve: {type: gate, open: 100 %}\"",
        "check valve: swing | ; write \"check valve: {type: swing}\"",
        "bend 45: {count: 2} | ; write \"fitting: {type: elbow 45}\"",
        "ball valve: {} | ; write \"valve: {type: ball, open: 100 %}\"",
        "non-return valve: {} | ; write \"check valve: {type: swing}\"",
        "gate | ; write \"valve: {type: gate, open: 100 %}\"",
        "run: {length: 1 m, material: PVC-U PN 10, size: 130 mm}"
            + " | ; the nearest are 125 mm and 140 mm",
        "run: {length: 1 m, material: PVC-U PN 10, size: 230 mm} | ; the nearest is 200 mm",
        "run: {length: 1 m, size: 60 mm} | ; the nearest are 50 mm and 63 mm"
      })
  void tradeNamesGetTheirSuggestion(String part, String shown) {
    String faults = ProjectText.faultsOf(line(part));
    assertTrue(faults.startsWith("pond.yaml:18:"), faults);
    assertTrue(faults.contains(shown), faults);
    assertEquals(1, faults.lines().count(), faults);
  }

  /** 38 ft are 11.6 m, 12 in 305 mm, 3000 gph 11.4 m3/h, 4 ft 1.22 m, 62 F 16.7 °C. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "run: {} | ; write for example \"length: 12 m\"",
        "run: 38 | ; write for example \"38 m\" (m, cm, mm, ft, in)",
        "skimmer: {sill: -90 mm} | ; write for example \"width: 300 mm\"",
        "skimmer: {width: 12 in, sill: -90} | ; write for example \"-90 mm\" (mm, cm, m, in, ft)",
        "filter: {clogged: 10 %} | for example \"rating: {flow: 11 m3/h, head: 1.2 m}\", or as",
        "filter: {rating: {flow: 9, head: 1 m}}"
            + " | ; write for example \"9 L/h\" (L/h, L/min, L/s, m3/h, m3/s, gph,"
      })
  void examplesOfAMetricFileAreMetric(String part, String shown) {
    String faults = ProjectText.faultsOf("show: metric\n" + line(part));
    assertTrue(faults.contains(shown), faults);
  }

  @ParameterizedTest
  @CsvSource({"4', 1.2192", "22\", 0.5588", "5' 6\", 1.6764", "5'6-1/2\", 1.6891"})
  void feetAndInchesAreRead(String length, double metres) {
    Project project = ProjectText.read(line("high point: " + length));
    assertEquals(metres, ((HighPoint) ProjectText.partOf(project, 1)).elevationM(), 1e-12);
  }
}
