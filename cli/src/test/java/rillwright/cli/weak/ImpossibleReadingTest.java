package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Readings beyond what the job can make. Its pump's sheet has 23.6 ft at no flow, 4,950 gph at no
 * head and 410 W at most, and may be off by a fifth: 5,940 gph, 492 W, and at a gauge at 0 ft 1.2 ·
 * 23.6 ft above the crest of 6 ft, 34.3 ft or 14.9 psi. The chamber's floor is at -26 in.
 */
class ImpossibleReadingTest {
  @TempDir private Path folder;

  private WeakCall read(String reading) throws IOException {
    Path file = Files.writeString(folder.resolve("visit.yaml"), "readings:\n  - " + reading + "\n");
    WeakCall call = WeakCall.about(WeakCall.JOB, "--readings", file.toString());
    assertEquals(0, call.status(), call.err());
    return call;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{gauge: G1, pressure: 43 psi} | 43 psi is more than any fault in this job can cause (14.9"
            + " psi at most). Look at the unit, the gauge and the place.",
        "{gauge: G1, pressure: 43 psi, when: pump off} | 43 psi is more than",
        "{gauge: G2, pressure: -20 psi} | -20 psi is less than any fault in this job can cause"
            + " (-14.7 psi at least). Look at the unit, the gauge and the place.",
        "{at: fall, flow: 30000 gph} | 30,000 gph is more than any fault in this job can cause"
            + " (5,930 gph at most). Look at the unit, the bucket and the place.",
        "{at: fall, crest head: 5 ft} | 60 in is more than",
        "{at: fall, brink: 5 ft} | 60 in is more than",
        "{pump: supply, power: 3 kW} | 3,000 W is more than any fault in this job can cause (492 W"
            + " at most). Look at the unit, the meter and the place.",
        "{at: chamber, level: -40 in} | -40 in is less than any fault in this job can cause (-26 in"
            + " at least). Look at the unit, the ruler and the place.",
      })
  void aReadingBeyondWhatTheJobCanMakeIsReported(String reading, String remark) throws IOException {
    String shown = read(reading).flat();
    assertTrue(shown.contains(remark), shown);
    assertFalse(shown.contains("two at once do"), shown);
  }

  /** Unlikely, but no reason to doubt the unit. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{gauge: G1, pressure: 10.2 psi, when: valve shut, valve: supply}",
        "{gauge: G2, pressure: 4 psi, when: pump off}",
        "{at: fall, flow: 4900 gph}",
        "{at: chamber, level: -26 in}",
        "{pump: supply, power: 430 W}",
      })
  void aReadingThatIsPossibleIsNot(String reading) throws IOException {
    String shown = read(reading).flat();
    assertFalse(shown.contains("than anything in this job can make"), shown);
  }

  /** Without a pump what open water above can make has no bound in the file. */
  @Test
  void whatFlowsByLevelAloneHasNoBoundByAPump() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("visit.yaml"), "readings: [{at: near trough, flow: 3000 gph}]");
    WeakCall call =
        WeakCall.about("../examples/header-pond/troughs.yaml", "--readings", file.toString());
    assertEquals(0, call.status(), call.err());
    assertFalse(call.flat().contains("than anything in this job can make"), call.out());
  }
}
