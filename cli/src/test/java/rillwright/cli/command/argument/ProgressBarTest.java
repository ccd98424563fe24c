package rillwright.cli.command.argument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class ProgressBarTest {
  private static final Duration NEVER = Duration.ofHours(1);

  private final StringWriter shown = new StringWriter();
  private final PrintWriter terminal = new PrintWriter(shown);

  @Test
  void shortWorkShowsNothing() {
    try (ProgressBar bar = new ProgressBar(terminal, NEVER)) {
      assertTrue(bar.goesOn(1, 2));
    }
    assertEquals("", shown.toString());
  }

  @Test
  @Timeout(60)
  void workThatReportsNothingShowsItsTime() throws InterruptedException {
    ProgressBar bar = new ProgressBar(terminal, Duration.ZERO);
    while (!shown.toString().contains("At work for 0 s")) {
      Thread.sleep(5);
    }
    bar.close();
    assertTrue(shown.toString().matches("(\rAt work for \\d+ s)+\r {48}\r"), shown.toString());
  }

  @Test
  @Timeout(60)
  void workThatReportsShowsABarThatIsTakenAway() throws InterruptedException {
    try (ProgressBar bar = new ProgressBar(terminal, NEVER)) {
      while (shown.toString().isEmpty()) {
        assertTrue(bar.goesOn(1, 4));
        Thread.sleep(20);
      }
      assertTrue(bar.goesOn(4, 4));
    }
    assertEquals(
        "\r[##########..............................] 25 %"
            + "\r[########################################] 100 %\r"
            + " ".repeat(48)
            + "\r",
        shown.toString());
  }
}
