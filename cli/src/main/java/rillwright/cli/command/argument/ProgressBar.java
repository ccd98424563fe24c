package rillwright.cli.command.argument;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.function.Function;
import rillwright.cli.report.page.terminal.Screen;
import rillwright.solver.progress.Progress;

/**
 * What a terminal shows while work takes long, on one line that is taken away again: a bar that
 * grows where the work reports how far it is, else for how long it has been going on.
 */
public final class ProgressBar implements Progress, AutoCloseable {
  private static final int WIDTH = 40;
  private static final int PER_CENT = 100;

  /** When a bar appears, and how often the time without one is shown. */
  private static final Duration PATIENCE = Duration.ofMillis(500);

  /** When the time appears where nothing is reported. */
  private static final Duration SILENCE = Duration.ofSeconds(2);

  private final PrintWriter terminal;
  private final long beganNs = System.nanoTime();
  private final Thread clock = new Thread(this::showTheTime, "time at work");
  private final Duration silence;
  private int shown = -1;
  private boolean isDirty;

  /**
   * Begins to wait.
   *
   * @param terminal to show it on
   * @param silence after which the time is shown where nothing is reported
   */
  ProgressBar(PrintWriter terminal, Duration silence) {
    this.terminal = terminal;
    this.silence = silence;
    clock.setDaemon(true);
    clock.start();
  }

  /** What work gives, watched if a person looks at a terminal. */
  public static <T> T watched(PrintWriter terminal, Function<Progress, T> work) {
    if (!Screen.isLive()) {
      return work.apply(Progress.UNSEEN);
    }
    try (ProgressBar bar = new ProgressBar(terminal, SILENCE)) {
      return work.apply(bar);
    }
  }

  @Override
  public synchronized boolean goesOn(int done, int all) {
    int percent = (int) ((long) PER_CENT * done / all);
    if (percent != shown && atWork().compareTo(PATIENCE) > 0) {
      shown = percent;
      int filled = WIDTH * percent / PER_CENT;
      show("[" + "#".repeat(filled) + ".".repeat(WIDTH - filled) + "] " + percent + " %");
    }
    return true;
  }

  private void showTheTime() {
    try {
      Thread.sleep(silence.toMillis());
      while (showsTheTime()) {
        Thread.sleep(PATIENCE.toMillis());
      }
    } catch (InterruptedException done) {
      Thread.currentThread().interrupt();
    }
  }

  /** Shows the time unless a bar is shown or the work is done; whether it is to be shown again. */
  private synchronized boolean showsTheTime() {
    if (shown >= 0 || clock.isInterrupted()) {
      return false;
    }
    show("At work for " + atWork().toSeconds() + " s");
    return true;
  }

  private Duration atWork() {
    return Duration.ofNanos(System.nanoTime() - beganNs);
  }

  private void show(String text) {
    isDirty = true;
    terminal.print("\r" + text);
    terminal.flush();
  }

  /** Takes it away. */
  @Override
  public synchronized void close() {
    clock.interrupt();
    if (isDirty) {
      show(" ".repeat(WIDTH + 8) + "\r");
    }
  }
}
