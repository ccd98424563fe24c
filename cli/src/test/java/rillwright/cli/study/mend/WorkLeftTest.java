package rillwright.cli.study.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.site.PondNeeds;
import rillwright.cli.study.mend.site.Site;
import rillwright.cli.study.mend.site.WorkLeft;
import rillwright.cli.study.mend.trial.Trials;
import rillwright.solver.stream.StreamBudgetFinder;

/** What is left out of a large job is counted, and said. */
class WorkLeftTest {
  private static final Path FALLS = Path.of("../examples/twin-falls/falls.yaml");

  private final Project project = ProjectReader.read(FALLS, List.of());

  @Test
  void isSpentByStatesAndCountsWhatIsLeftOut() {
    WorkLeft work = Site.of(project).work();
    int taken = 0;
    while (work.take(100)) {
      taken++;
    }
    // 150,000 lines for any job, 3,000 for each of its own; each state is all lines once.
    double lines = project.network().lines().size();
    assertEquals(Math.ceil((150_000 + 3_000 * lines) / (100 * lines)), taken);
    assertTrue(work.isSpent());
    assertFalse(work.take(1));
    assertEquals(2, work.untried());
  }

  @Test
  void isSpentByTheStepsOfWhatPondsAreAsked() {
    Project stream = ProjectReader.read(Path.of("../examples/long-stream/stream.yaml"), List.of());
    WorkLeft work = Site.of(stream).work();
    assertTrue(new PondNeeds(OptionalDouble.empty()).in(stream, work).isPresent());
    int steps = StreamBudgetFinder.find(stream.streams()).iterations();
    int taken = 0;
    while (work.take(1)) {
      taken++;
    }
    // ten Newton steps of a network are one balance of its lines
    double lines = stream.network().lines().size();
    assertTrue(steps > 20, () -> "" + steps);
    assertEquals(Math.ceil((150_000 + 3_000 * lines) / lines - steps / 10.0), taken);
  }

  @Test
  void changesBeyondAreNotTried() {
    Site site = Site.of(project);
    site.work().spend(1_000_000);
    MendAnswer whole = new MendRequest(Offered.NOTHING, List.of(), 10).answer(project);
    assertEquals(0, whole.untried());
    assertFalse(whole.remedies().isEmpty());
    assertTrue(new Trials(site).of(whole.remedies().get(0).candidate()).isEmpty());
    assertEquals(1, site.work().untried());
  }
}
