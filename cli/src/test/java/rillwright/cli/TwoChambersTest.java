package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.ProjectReader;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Two chambers in a row, both below their intakes until the second is known to be starved. */
class TwoChambersTest {

  /** Expected: computed by another program that inverts each law by bracketing. */
  @Test
  void onlyTheOneThatIsDrawnDownIsStarvedAndItsDrawIsMet() {
    Path file = Path.of("src/test/resources/rillwright/cli/two-chambers.yaml");

    SteadyState state = SteadyStateFinder.find(ProjectReader.read(file, List.of()).network());

    assertFalse(state.point(new PointName("chamber")).isStarved());
    assertEquals(
        2.4269, state.point(new PointName("second chamber")).missingHeadM().orElseThrow(), 5e-5);
    assertEquals(1.66788e-3, state.line(new LineName("line 1")).flowM3PerS(), 5e-9);
  }
}
