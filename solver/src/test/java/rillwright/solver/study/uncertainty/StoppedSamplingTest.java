package rillwright.solver.study.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Stopped;

/** Sampling ends soon after the one who watches it says so. */
class StoppedSamplingTest {
  private final AtomicInteger worked = new AtomicInteger();

  private void sample(int threads, Progress progress) {
    SampleRun.of(10_000, threads, sample -> worked.incrementAndGet(), progress);
  }

  @Test
  void noSampleIsWorkedOutAfterwards() {
    assertThrows(Stopped.class, () -> sample(1, (done, all) -> done < 200));
    assertEquals(200, worked.get());
  }

  @Test
  void everyThreadEndsWithItsBlock() {
    assertThrows(Stopped.class, () -> sample(4, (done, all) -> done < 200));
    assertTrue(worked.get() <= 200 + 4 * 50, worked + " samples");
  }

  @Test
  void itGoesOnToTheEndUnwatched() {
    sample(4, Progress.UNSEEN);
    assertEquals(10_000, worked.get());
  }
}
