package rillwright.cli.page.panel;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import rillwright.solver.progress.Progress;
import rillwright.solver.progress.Stopped;

/** A panel's answer on its way: how far it has come, and a way to stop it. */
public final class Work implements Progress {
  private static final int WHOLE = 100;

  private final CountDownLatch end = new CountDownLatch(1);
  private volatile boolean wanted = true;
  private volatile int percent;
  private volatile String answer = "";

  /**
   * Begins it.
   *
   * @param how the answer is made; it says itself what is wrong
   */
  static Work begin(Function<Progress, String> how) {
    Work work = new Work();
    Thread thread =
        new Thread(
            () -> {
              try {
                work.answer = how.apply(work);
              } catch (Stopped stopped) {
                work.answer = "<p>Stopped at " + work.percent + " %.</p>";
              } finally {
                work.end.countDown();
              }
            },
            "panel");
    thread.setDaemon(true);
    thread.start();
    return work;
  }

  /** Whether it has ended, waiting for it a little. */
  public boolean hasEnded(long patienceMs) {
    try {
      return end.await(patienceMs, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Its answer, once it has ended. */
  public String answer() {
    return answer;
  }

  /** How far it has come, of 100. */
  public int percent() {
    return percent;
  }

  /** Nobody waits for it any more. */
  public void stop() {
    wanted = false;
  }

  @Override
  public boolean goesOn(int done, int all) {
    percent = (int) ((long) WHOLE * done / Math.max(1, all));
    return wanted;
  }
}
