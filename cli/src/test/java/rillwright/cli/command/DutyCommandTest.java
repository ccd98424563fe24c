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
    String told = duty("small-pond/pond.yaml");
    assertTrue(told.contains("valves as they stand"), told);
    assertFalse(told.contains("others throttled"), told);
    assertTrue(told.contains("curve passes through this point"), told);
  }

  @Test
  void withTwoFallsBothDutiesAreTold() {
    String told = duty("twin-falls/falls.yaml");
    assertTrue(told.contains("others throttled"), told);
    assertTrue(told.contains("Keep the valves in its line wide open"), told);
  }

  /** The fish pond has a filter and no skimmer. */
  @Test
  void onlyWhatTheFileHasIsAdvisedOn() {
    String told = duty("fish-pond/pond.yaml");
    assertFalse(told.contains("skimmer"), told);
    assertTrue(told.contains("lines.LINE.filter.clogged"), told);
  }
}
