package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DutyCommandTest {
  private static final Path EXAMPLES = Path.of("..", "examples");

  private static String duty(String file, String... more) {
    List<String> arguments = new ArrayList<>(List.of("duty", EXAMPLES.resolve(file).toString()));
    arguments.addAll(List.of(more));
    Run run = Run.of(arguments.toArray(String[]::new));
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

  /** Clogged, the filter beside the only fall with a target leaves more for it. */
  @Test
  void onlyWhatAsksMoreWhenItIsCloggedIsAdvisedOn() {
    String clogged = "--set \"lines.filter branch.filter.clogged=40 %\"";
    String shown = duty("fish-pond/pond.yaml");
    assertFalse(shown.contains("clog"), shown);
    shown = duty("fish-pond/pond.yaml", "--set", "points.return 1.target=8 m3/h");
    assertTrue(shown.contains(clogged), shown);
    assertTrue(duty("small-pond/pond.yaml").contains("lines.intake.skimmer.clogged=40 %"));
  }
}
