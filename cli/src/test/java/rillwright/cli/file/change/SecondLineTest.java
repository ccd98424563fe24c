package rillwright.cli.file.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** One more line beside one that there is. */
class SecondLineTest {
  private static final String SUPPLY = "lines.supply.second line=yes";

  private static Project pond(String... changes) {
    return ProjectReader.read(Path.of("../examples/small-pond/pond.yaml"), List.of(changes));
  }

  private static double flow(SteadyState state, String line) {
    return state.line(new LineName(line)).flowM3PerS();
  }

  /** Without what the tee takes both halves carry the same, and the pump more than before. */
  @Test
  void sharesTheFlow() {
    double before = flow(SteadyStateFinder.find(pond().network()), "supply");
    SteadyState alike =
        SteadyStateFinder.find(
            pond(SUPPLY, "lines.supply first.fitting.k=0.5", "lines.supply second.fitting.k=0.5")
                .network());
    assertTrue(flow(alike, "supply") > before);
    assertEquals(flow(alike, "supply first"), flow(alike, "supply second"), 1e-12);
    assertEquals(
        flow(alike, "supply"), flow(alike, "supply first") + flow(alike, "supply second"), 1e-12);
  }

  @Test
  void isCleanBesideOneThatIsClogged() {
    Project project = pond("lines.intake.skimmer.clogged=40 %", "lines.intake.second line=yes");
    List<Double> clogged =
        project.network().placed(Skimmer.class).stream()
            .map(skimmer -> skimmer.part().clogged())
            .toList();
    assertEquals(List.of(0.4, 0.0), clogged);
  }

  @ParameterizedTest
  @CsvSource({
    "lines.supply.second line=no, asked for with \"yes\"",
    "lines.nowhere.second line=yes, there is no",
    "lines.supply second.second line=yes, there is no"
  })
  void isRefusedInWords(String change, String words) {
    InvalidInput wrong = assertThrows(InvalidInput.class, () -> pond(change));
    assertTrue(wrong.getMessage().contains(words), wrong.getMessage());
  }

  @Test
  void isLaidOnce() {
    assertThrows(
        InvalidInput.class,
        () -> pond("lines.intake.second line=yes", "lines.intake.second line=yes"));
  }
}
