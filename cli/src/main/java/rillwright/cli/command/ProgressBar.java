package rillwright.cli.command;

import java.io.PrintWriter;
import rillwright.solver.study.uncertainty.Progress;

/** A bar that grows on a terminal, on one line that it takes away again. */
final class ProgressBar implements Progress {
  private static final int WIDTH = 40;
  private static final int PER_CENT = 100;

  private final PrintWriter terminal;
  private int shown = -1;

  ProgressBar(PrintWriter terminal) {
    this.terminal = terminal;
  }

  @Override
  public void reached(int done, int all) {
    int percent = (int) ((long) PER_CENT * done / all);
    if (percent == shown) {
      return;
    }
    shown = percent;
    int filled = WIDTH * percent / PER_CENT;
    terminal.print("\r[" + "#".repeat(filled) + ".".repeat(WIDTH - filled) + "] " + percent + " %");
    if (done == all) {
      terminal.print("\r" + " ".repeat(WIDTH + 8) + "\r");
    }
    terminal.flush();
  }
}
