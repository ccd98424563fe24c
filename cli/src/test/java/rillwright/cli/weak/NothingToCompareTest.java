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

/** Jobs in which nothing flows as they stand, and priors that leave nothing to explain with. */
class NothingToCompareTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lines.supply.valve.open=0 % | The valve in \"supply\" is shut: nothing runs through it.",
        "lines.intake.filter.clogged=100 % | The filter in \"intake\" lets nothing through",
        "lines.supply.pump.speed=0 % | The pump in \"supply\" stands still (speed 0 %).",
        "points.fall.crest=40 ft | The pump in \"supply\" runs and moves no water",
      })
  void aJobInWhichNothingFlowsIsRefusedWithTheReason(String change, String reason) {
    for (String option : new String[] {"--format=text", "--format=json", "--include-slight"}) {
      WeakCall call = WeakCall.about(WeakCall.JOB, "--set", change, option);
      assertEquals(2, call.status(), call.out());
      assertEquals("", call.out());
      assertTrue(
          call.err()
              .startsWith(WeakCall.JOB + ": nothing flows in the job as the file describes it"),
          call.err());
      assertTrue(call.err().contains(reason), call.err());
    }
  }

  /** Its causes are no answer to readings. */
  @Test
  void itsCausesAreListedAllTheSame() {
    WeakCall call =
        WeakCall.about(WeakCall.JOB, "--causes", "--set", "lines.supply.valve.open=0 %");
    assertEquals(0, call.status(), call.err());
    assertFalse(call.out().contains("NaN"));
  }

  /** A pond that is 10 % lower weakens no fall by a tenth: alone it cannot be why one is weak. */
  @Test
  void priorsThatLeaveOnlyWhatWeakensNoFallAreRefused() throws IOException {
    String printed = WeakCall.about(WeakCall.JOB, "--causes", "--format", "json").out();
    String none = printed.replaceAll("\"prior\": [0-9.e-]+", "\"prior\": 0");
    String only =
        none.replaceAll(
            "(?s)(\"cause\": \"pond low\".*?\"from\": )[0-9.]+(.*?\"to\": )[0-9.]+(.*?\"prior\":"
                + " )0",
            "$10.01$20.02$31");
    String file = Files.writeString(folder.resolve("priors.json"), only).toString();
    WeakCall call = WeakCall.about(WeakCall.JOB, "--priors", file);
    assertEquals(2, call.status(), call.out());
    assertTrue(
        call.err().contains("priors.json: no cause with a prior above 0 takes a tenth off"),
        call.err());
    assertEquals(0, WeakCall.about(WeakCall.JOB, "--priors", file, "--include-slight").status());
  }
}
