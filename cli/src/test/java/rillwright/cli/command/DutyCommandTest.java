package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class DutyCommandTest {
  private static final Path EXAMPLES = Path.of("..", "examples");

  private static String duty(String file) {
    Run run = Run.of("duty", EXAMPLES.resolve(file).toString());
    assertEquals("", run.err());
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void withOneFallThereAreNoOthersToThrottle() {
    String shown = duty("small-pond/pond.yaml");
    assertTrue(shown.contains("valves as they stand"), shown);
    assertFalse(shown.contains("others throttled"), shown);
    assertTrue(shown.contains("curve passes through this point"), shown);
  }

  @Test
  void withTwoFallsBothDutiesAreReported() {
    String shown = duty("twin-falls/falls.yaml");
    assertTrue(shown.contains("others throttled"), shown);
    assertTrue(shown.contains("Keep the valves in its line wide open"), shown);
  }

  /** The fish pond has a filter and no skimmer. */
  @Test
  void onlyWhatTheFileHasIsAdvisedOn() {
    String shown = duty("fish-pond/pond.yaml");
    assertFalse(shown.contains("skimmer"), shown);
    assertTrue(shown.contains("lines.filter branch.filter.clogged"), shown);
  }
}
