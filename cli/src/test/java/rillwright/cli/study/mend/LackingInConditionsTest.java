package rillwright.cli.study.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyStateFinder;

/** A fall that lacks water as written and in conditions is shown with what it gets in both. */
class LackingInConditionsTest {
  private static final PointName FALL = new PointName("high fall");

  private static final MendRequest REQUEST =
      new MendRequest(
          Offered.NOTHING, List.of(), 10, OptionalDouble.empty(), Optional.of(List.of()));

  /** And a change that meets it counts no more than one that meets another fall. */
  @Test
  void bothFiguresAreThoseOfTheStatesThemselves() {
    Project project =
        ProjectReader.read(Path.of("..", "examples", "twin-falls", "falls.yaml"), List.of());
    MendAnswer answer = REQUEST.answer(project);
    assertLacksAsComputed(answer.needs(), project);
    List<Remedy> lacking =
        answer.remedies().stream()
            .filter(it -> it.leaves().stream().anyMatch(this::isShort))
            .toList();
    assertFalse(lacking.isEmpty());
    lacking.forEach(it -> assertLacksAsComputed(it.leaves(), project.with(it.candidate().set())));
    assertEquals(3, answer.needs().size());
    assertEquals(2, answer.mendingAll().get(0).metOf(answer.needs()));
  }

  private boolean isShort(Need need) {
    return need.point().equals(FALL) && need.isUnder();
  }

  private static void assertLacksAsComputed(List<Need> needs, Project site) {
    List<Need> ofFall = needs.stream().filter(it -> it.point().equals(FALL)).toList();
    double leastM3PerS =
        ProjectConditions.of(site, List.of()).projects().stream()
            .mapToDouble(it -> flowM3PerS(it.project()))
            .min()
            .orElseThrow();
    assertEquals(Need.UNDER_TARGET, ofFall.get(0).code());
    assertEquals(flowM3PerS(site), ofFall.get(0).hasM3PerS(), 1e-9);
    if (flowM3PerS(site) == 0) {
      assertEquals(1, ofFall.size(), "less than none");
    } else {
      assertEquals(Need.UNDER_IN_CONDITION, ofFall.get(1).code());
      assertEquals(leastM3PerS, ofFall.get(1).hasM3PerS(), 1e-9);
      assertTrue(leastM3PerS < flowM3PerS(site));
    }
  }

  private static double flowM3PerS(Project site) {
    return SteadyStateFinder.find(site.network()).point(FALL).outflowM3PerS();
  }

  /**
   * The file's own condition names a line that a second pipe parts: the new pipe is clean there.
   */
  @Test
  void aConditionOfALineThatIsPartedIsSoBeforeTheSecondPipe(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("falls.yaml");
    Path example = Path.of("..", "examples", "twin-falls");
    Files.createDirectory(folder.resolve("pumps"));
    try (Stream<Path> sheets = Files.list(example.resolve("pumps"))) {
      for (Path sheet : sheets.toList()) {
        Files.copy(sheet, folder.resolve("pumps").resolve(sheet.getFileName()));
      }
    }
    Files.writeString(
        file,
        Files.readString(example.resolve("falls.yaml"))
            + "\nconditions: {limed: {lines: {supply: {pipe: {deposit: 6 mm}}}}}\n");
    Project own = ProjectReader.read(file, List.of());
    MendAnswer limed = REQUEST.answer(own);
    String second = "lines.supply.second line=yes";
    Remedy remedy =
        limed.remedies().stream()
            .filter(it -> it.candidate().set().equals(List.of(second)))
            .findFirst()
            .orElseThrow();
    double hasM3PerS =
        flowM3PerS(own.with(List.of("lines.supply.pipe.deposit=6 mm")).with(List.of(second)));
    assertEquals(
        List.of(hasM3PerS),
        remedy.leaves().stream()
            .filter(it -> it.point().equals(FALL) && it.isOfCondition())
            .map(Need::hasM3PerS)
            .toList());
  }
}
