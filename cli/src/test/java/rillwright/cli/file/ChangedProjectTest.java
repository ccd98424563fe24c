package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.solver.steady.SteadyStateFinder;

/** A project changed in memory is the one that its edited file describes. All data is invented. */
class ChangedProjectTest {
  private static final String POND =
      """
      rillwright: 1
      points:
        pond: {kind: basin, level: 0 ft}
        fall: {kind: fall, crest: 4 ft, width: 30 in}
      lines:
        supply:
          from: pond
          to: fall
          pipe: {inside: 2 in, factor: 0.02}
          parts: [pump: small, run: 20 ft, valve: {type: ball, open: 100 %}]
      pumps: {small: small.csv}
      """;

  @TempDir private Path folder;

  private Path write(String pond) throws IOException {
    Files.writeString(folder.resolve("small.csv"), "flow [gph],head [psi]\n0,5\n2000,4\n4000,1\n");
    return Files.writeString(folder.resolve("pond.yaml"), pond);
  }

  @Test
  void itIsTheProjectOfTheEditedFile() throws IOException {
    Project before = ProjectReader.read(write(POND), List.of());
    Project edited =
        ProjectReader.read(
            write(POND.replace("100 %", "60 %").replace("crest: 4 ft", "crest: 5 ft")), List.of());
    Project changed =
        before
            .with(List.of("lines.supply.valve.open=60 %"))
            .with(List.of("points.fall.crest=5 ft"));
    assertEquals(
        List.of("lines.supply.valve.open=60 %", "points.fall.crest=5 ft"), changed.changes());
    assertEquals(edited.network().points(), changed.network().points());
    assertEquals(flow(edited), flow(changed));
    assertNotEquals(flow(before), flow(changed));
    assertEquals(List.of(), before.changes(), "the project itself leave as it is");
  }

  @Test
  void neitherItsFileNorItsSheetsAreReadAgain() throws IOException {
    Path file = write(POND);
    Project before = ProjectReader.read(file, List.of());
    final double cold =
        flow(ProjectReader.read(file, List.of("water.temperature=2 C", "title=Cold")));
    Files.delete(file);
    Files.delete(folder.resolve("small.csv"));
    assertEquals(cold, flow(before.with(List.of("water.temperature=2 C"))), "psi in cold water");
    assertEquals(flow(before), flow(before.with(List.of("title=Other"))));
  }

  @Test
  void whatIsWrongWithChangesIsReportedAsWhenTheFileIsRead() throws IOException {
    Path file = write(POND);
    List<String> wrong = List.of("lines.suply.valve.open=60 %", "points.fall.crest=high");
    Project project = ProjectReader.read(file, List.of());
    assertEquals(
        assertThrows(InvalidInput.class, () -> ProjectReader.read(file, wrong)).getMessage(),
        assertThrows(InvalidInput.class, () -> project.with(wrong)).getMessage());
  }

  private static double flow(Project project) {
    return SteadyStateFinder.find(project.network()).lines().get(0).flowM3PerS();
  }
}
