package rillwright.cli.command.argument;

import java.io.PrintWriter;
import rillwright.solver.progress.Progress;

/** A bar that grows on a terminal while work takes long, on one line that it takes away again. */
public final class ProgressBar implements Progress, AutoCloseable {
  private static final int WIDTH = 40;
  private static final int PER_CENT = 100;

  /** Shorter work shows none, ns. */
  private static final long PATIENCE_NS = 500_000_000;

  private final PrintWriter terminal;
  private final long beganNs = System.nanoTime();
  private int shown = -1;

  public ProgressBar(PrintWriter terminal) {
    this.terminal = terminal;
  }

  @Override
  public boolean goesOn(int done, int all) {
    int percent = (int) ((long) PER_CENT * done / all);
    if (percent != shown && System.nanoTime() - beganNs > PATIENCE_NS) {
      shown = percent;
      int filled = WIDTH * percent / PER_CENT;
      terminal.print(
          "\r[" + "#".repeat(filled) + ".".repeat(WIDTH - filled) + "] " + percent + " %");
      terminal.flush();
    }
    return true;
  }

  /** Takes it away. */
  @Override
  public void close() {
    if (shown >= 0) {
      terminal.print("\r" + " ".repeat(WIDTH + 8) + "\r");
      terminal.flush();
    }
  }
}
