package rillwright.cli.study.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.mend.site.Judgement;
import rillwright.cli.study.mend.site.PondNeeds;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.stream.StreamBudgetFinder;

/**
 * A change with which the levels that run have no balance is no remedy where they are asked for.
 */
class NoLevelsTest {
  /** Water is drawn off at a tee, which a skimmer above the water cannot feed. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aSkimmerLiftedDryMendsNothing(boolean asked) {
    Project project =
        ProjectReader.read(
            Path.of("../examples/twin-falls/falls.yaml"), List.of("points.split.draw=100 gph"));
    Project dry =
        project.with(List.of("lines.intake.skimmer.sill=2 in", "lines.intake.skimmer.height=4 in"));
    assertThrows(NoBalance.class, () -> StreamBudgetFinder.find(dry.streams()));
    Optional<PondNeeds> ponds =
        asked ? Optional.of(new PondNeeds(OptionalDouble.of(1))) : Optional.empty();
    Site site = Site.of(project, ponds, Optional.empty());

    SteadyState better = site.with(List.of("lines.low.valve.k=2.94")).orElseThrow();

    assertFalse(Judgement.of(site, better, project).orElseThrow().helped().isEmpty());
    assertEquals(asked, Judgement.of(site, better, dry).isEmpty());
    assertEquals(asked, !site.doesRunning(dry.network(), state -> true));
    assertTrue(site.doesRunning(project.network(), state -> true));
  }
}
