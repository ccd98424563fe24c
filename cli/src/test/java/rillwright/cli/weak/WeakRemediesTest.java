package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.command.Run;
import rillwright.cli.examples.ExampleSheets;
import rillwright.cli.report.weak.CauseWords;
import rillwright.cli.report.weak.Caution;
import rillwright.cli.report.weak.RiskWords;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/** What to do about likely causes, by what was promised and by whether there is a pump. */
class WeakRemediesTest {
  private static final String TWO_FAULTS = "../examples/weak-fall/two-faults.yaml";

  @TempDir private Path folder;

  private String without(String job, String change, String sign) throws IOException {
    Path none = Files.writeString(folder.resolve("none.yaml"), "signs: [" + sign + "]");
    WeakCall call =
        WeakCall.about("../examples/" + job, "--readings", none.toString(), "--set", change);
    assertEquals(0, call.status(), call.err());
    return call.flat();
  }

  /** By the file: the fall 3,300 gph; the low fall 115 % and the high one 90 % of its target. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "weak-fall/fall.yaml | points.fall.target=3000 gph | By the file the job meets its targets:"
            + " \"fall\" gets its target.",
        "weak-fall/fall.yaml | points.fall.target=4000 gph | By the file it is undersized: \"fall\""
            + " falls short of the target. Look at larger pipe and at other pumps",
        "twin-falls/falls.yaml | title=Twins | The flow is badly balanced: by the file, \"low"
            + " fall\" gets more than its target and \"high fall\" less. Run \"rillwright"
            + " balance\"",
        "twin-falls/falls.yaml | points.low fall.target=4000 gph | By the file it is undersized:"
            + " \"low fall\" and \"high fall\" fall short of the target.",
        "header-pond/troughs.yaml | title=Troughs | By the file the job meets its targets: \"near"
            + " trough\" and \"far trough\" get their targets.",
        "header-pond/troughs.yaml | points.far trough.target=9000 gph | The flow is badly balanced",
      })
  void nothingWrongIsJudgedByTheTargets(String job, String change, String advice)
      throws IOException {
    String shown = without(job, change, "since it was built");
    assertTrue(shown.contains("nothing wrong: " + advice), shown);
  }

  @Test
  void withoutATargetItSaysWhatItDependsOn() throws IOException {
    String job = Files.readString(Path.of(WeakCall.JOB)).replace(", target: 120 gph/in", "");
    ExampleSheets.layInto(folder, Path.of("../examples/weak-fall"));
    Path file =
        Files.writeString(folder.resolve("job.yaml"), job.replaceAll("(?s)readings:.*", ""));
    Path none = Files.writeString(folder.resolve("none.yaml"), "signs: [always]");
    String shown = WeakCall.about(file.toString(), "--readings", none.toString()).flat();
    assertTrue(shown.contains("nothing wrong: The file has no \"target\""), shown);
  }

  @Test
  void withoutReadingsAndSignsOnlyTheseAreAskedFor() throws IOException {
    Path none = Files.writeString(folder.resolve("none.yaml"), "readings: []");
    String shown = WeakCall.about(WeakCall.JOB, "--readings", none.toString()).flat();
    assertTrue(shown.contains("READ NEXT"), shown);
    assertTrue(shown.contains("REMEDIES None yet"), shown);
    assertFalse(shown.contains("- A, "), shown);
  }

  /** Where the water is under suction a vent ends the siphon or the prime. */
  @Test
  void airAtAHighPointIsPurgedAndNotVented() {
    String remedy = CauseWords.AIR_AT_HIGH_POINT.remedy();
    assertTrue(remedy.contains("through a valve that is closed while it runs"), remedy);
    assertFalse(remedy.matches("(?i).*(vent the|fit a vent|air valve).*"), remedy);
  }

  @Test
  void chancesOfSingleFaultsAreThoseOfAll() {
    String shown = WeakCall.about(WeakCall.JOB, "--readings", TWO_FAULTS).flat();
    Run.assertReported(
        shown,
        "All single faults together: under 1 %.",
        "A none of these under 1 %",
        "B pipe fouled under 1 %");
  }

  @Test
  void withoutAPumpNoSupplyIsToBeIsolatedAndNoPumpToBeStopped() throws IOException {
    String shown = without("header-pond/troughs.yaml", "title=Troughs", "for weeks");
    assertTrue(shown.contains("Shut the line and let the pressure off"), shown);
    assertFalse(shown.contains("supply"), shown);
    assertFalse(shown.contains("pump"), shown);
    String pumped = without("small-pond/pond.yaml", "title=Pond", "for weeks");
    Run.assertReported(
        pumped,
        "skimmer clogged: Switch the pump off and unplug or isolate it before anyone reaches in.");
    assertTrue(pumped.contains("hands out of the water while the pump runs"), pumped);
    assertEquals(
        "Read with a ruler or staff from the edge; open water drowns small children.",
        RiskWords.of(Risk.OPEN_WATER, false).sentence());
    for (Caution caution : List.of(Caution.HANDS, Caution.PRESSURE)) {
      assertFalse(caution.sentence(false).matches(".*(supply|pump).*"), caution.sentence(false));
    }
  }
}
