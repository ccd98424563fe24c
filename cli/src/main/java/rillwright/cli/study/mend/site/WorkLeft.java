package rillwright.cli.study.mend.site;

import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Network;

/**
 * How much may still be tried of a job, so that large ones end: lines balanced, some for any job
 * and some for each of its lines. What is left out beyond is counted.
 */
public final class WorkLeft {
  /** Lines balanced for any job: it is some seconds' work. */
  private static final double ANYWAY = 150_000;

  /** Lines balanced for each line of it. */
  private static final double A_LINE = 3_000;

  /** Newton steps of one balance, about. */
  private static final double STEPS = 10;

  private final int lines;

  /** Lines balanced for one state: each that climbs asks for one balance more. */
  private final double ofAState;

  private double left;
  private int untried;

  WorkLeft(Network network) {
    this.lines = network.lines().size();
    long climbing = network.lines().stream().filter(line -> line.has(HighPoint.class)).count();
    this.ofAState = lines * (1.0 + climbing);
    this.left = ANYWAY + A_LINE * lines;
  }

  /** Takes what a change costs to be tried; false, and it is left out, if nothing is left. */
  public boolean take(int states) {
    if (isSpent()) {
      untried++;
      return false;
    }
    spend(states);
    return true;
  }

  /** Takes what some states cost. */
  public void spend(int states) {
    left -= states * ofAState;
  }

  /** Takes what some Newton steps cost. */
  void spendSteps(int steps) {
    left -= steps / STEPS * lines;
  }

  /** Whether nothing more is tried. */
  public boolean isSpent() {
    return left <= 0;
  }

  /** How many changes were left out. */
  public int untried() {
    return untried;
  }
}
