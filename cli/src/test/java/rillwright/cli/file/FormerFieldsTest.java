package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.file.condition.InCondition;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.solver.network.PointName;

/** Files that use the former name of a field say what they said. */
class FormerFieldsTest {
  private static final String PROJECT =
      """
      rillwright: 1
      points:
        want: {kind: basin, level: 0 m}
        fall: {kind: fall, crest: -1 m, width: 20 in, want: 3 L/s}
      lines:
        down: {from: want, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm}, parts: [{run: 5 m}]}
      conditions:
        less: {points: {fall: {want: 2 L/s}}}
      """;

  @TempDir Path folder;

  @Test
  void aTargetIsReadUnderItsFormerName() throws Exception {
    assertEquals(0.003, targetM3PerS(read(List.of())), 1e-12);
  }

  @Test
  void aChangeFindsItUnderEitherName() throws Exception {
    assertEquals(0.004, targetM3PerS(read(List.of("points.fall.want=4 L/s"))), 1e-12);
    assertEquals(0.004, targetM3PerS(read(List.of("points.fall.target=4 L/s"))), 1e-12);
  }

  @Test
  void aConditionFindsItUnderItsFormerName() throws Exception {
    InCondition less = ProjectConditions.of(read(List.of()), List.of("less")).projects().get(0);
    assertEquals(0.002, targetM3PerS(less.project()), 1e-12);
  }

  private Project read(List<String> changes) throws Exception {
    return ProjectReader.read(Files.writeString(folder.resolve("project.yaml"), PROJECT), changes);
  }

  private static double targetM3PerS(Project project) {
    return project.network().point(new PointName("fall")).targetM3PerS().getAsDouble();
  }
}
