package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.steady.SteadyStateFinder;

/** An invented job in which nothing stands out; one thing is made wrong at a time. */
class FindingsTest {
  private static final Path JOB =
      Path.of("src", "test", "resources", "rillwright", "cli", "findings.yaml");

  @Test
  void aGoodJobHasNone() {
    assertEquals(List.of(), findings());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          lines.supply.valve.open=0 %           | under-target upper, under-target lower, valve-shut supply, pump-runs-against-shut-way supply
          lines.intake.skimmer.clogged=100 %    | under-target upper, under-target lower, clogged-shut intake, pump-runs-dry supply
          lines.intake.filter.clogged=100 %     | under-target upper, under-target lower, clogged-shut intake, pump-runs-dry supply
          lines.intake.skimmer.sill=1 in        | dry-skimmer intake, under-target upper, under-target lower, pump-runs-dry supply
          lines.intake.skimmer.clogged=90 %     | starved-chamber chamber, under-target upper, under-target lower
          lines.supply.pump=weak                | under-target upper, under-target lower, below-minimum-flow supply, cannot-start to upper
          lines.supply.pump=strong              | over-target upper, over-target lower, past-published-range supply
          lines.supply.pump=humped              | curve-levelled supply
          lines.supply.pump.speed=0 %           | under-target upper, under-target lower, pump-stopped supply
          points.upper.crest=13.8 ft;points.lower.crest=13.8 ft;lines.to upper.high point=0 ft | under-target upper, under-target lower, thin-sheet upper, thin-sheet lower, below-minimum-flow supply, touchy upper, touchy lower
          points.upper.crest=20 ft;points.lower.crest=20 ft | under-target upper, under-target lower, check-valve-shut supply, pump-held-shut supply
          points.upper.crest=-1 ft;points.upper.target=9000 gph;lines.to upper.run.length=200 ft;lines.to upper.high point=-3 ft | crest-not-above-water upper, under-target upper, under-target lower
          points.chamber.floor=-50 in           | confined-space chamber
          points.upper.target=1000 gph            | over-target upper
          points.upper.width=200 in             | thin-sheet upper
          points.pond.level=3 in                | drowned-skimmer intake, runs-over pond
          lines.supply.pipe.size=1-1/2 in       | under-target upper, under-target lower, fast-discharge supply
          lines.to upper.high point=8 ft        | under-target upper, over-target lower, thin-sheet upper, fast-discharge to lower, high-point-vented to upper
          lines.to upper.high point=30 ft;lines.to upper.run.length=60 ft | under-target upper, over-target lower, fast-discharge to lower, cannot-start to upper
          lines.to upper.valve.open=0 %;lines.to lower.valve.open=0 % | under-target upper, under-target lower, pump-runs-against-shut-way supply, valve-shut to upper, valve-shut to lower
          """)
  void whatIsWrongIsNamedAndNothingElse(String changes, String expected) {
    assertEquals(
        Arrays.asList(expected.split(", ")),
        findings(changes.split(";")).stream()
            .map(finding -> finding.code() + " " + finding.at())
            .toList());
  }

  @Test
  void aStarvedPumpIsNotAskedToLiftMore() {
    for (Finding finding : findings("lines.intake.skimmer.clogged=90 %")) {
      String message = finding.message(ShownUnits.US);
      assertTrue(!message.contains("more head") && !message.contains("stronger"), message);
    }
  }

  private static List<Finding> findings(String... changes) {
    return Findings.of(SteadyStateFinder.find(ProjectReader.read(JOB, List.of(changes)).network()));
  }
}
