package rillwright.cli.study;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.mend.MendRequest;
import rillwright.cli.study.mend.change.Offered;

class MendDutyTest {
  /** Where conditions are asked for, a pump that is only enough as written would fall short. */
  @Test
  void anotherPumpIsAskedForWhatTheHardestConditionTakes() {
    Project project =
        ProjectReader.read(Path.of("../examples/twin-falls/ball-valves.yaml"), List.of());
    double asWritten = headM(project, Optional.empty());
    assertTrue(headM(project, Optional.of(List.of("cold water", "five years fouled"))) > asWritten);
    assertTrue(headM(project, Optional.of(List.of("low pond"))) >= asWritten);
  }

  private static double headM(Project project, Optional<List<String>> conditions) {
    return new MendRequest(Offered.NOTHING, List.of(), 10, OptionalDouble.empty(), conditions)
        .answer(project)
        .duty()
        .orElseThrow()
        .duty()
        .throttled()
        .orElseThrow()
        .headM();
  }
}
