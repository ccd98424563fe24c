package rillwright.solver.balance;

import java.util.Arrays;
import rillwright.solver.balance.State.Pin;

/**
 * Finds the balance of a problem.
 *
 * <p><b>Method.</b> First all laws are carried on steeply beyond the flows that they allow and
 * Newton's method with a search along each step finds the minimum of that content, which exists and
 * is reached from any start. It shows which links are held at a bound; those are pinned exactly
 * there, what they cut off is taken out, and Newton's method goes on with the rest, until no free
 * link is beyond a bound and no pinned one would leave it.
 *
 * <p><b>Stopping.</b> Every node's flow error is at most 1e-9 of the largest flow (or 1e-12 m³/s if
 * that is larger), every link's head error at most 1e-9 m (or what double precision allows at the
 * heads at hand). Both are recomputed from the answer.
 *
 * <p><b>Errors.</b> The problem must be sound: draws that can be met, a held head in every part.
 * {@link SearchFailed} is a defect.
 */
public final class Balancer {
  private static final double RELATIVE_FLOW_TOLERANCE = 1e-9;
  private static final double LEAST_FLOW_TOLERANCE_M3_PER_S = 1e-12;

  /** Slope beyond a bound in the first search, s/m²: 1e4 m per m³/h. */
  private static final double USUAL_STEEPNESS = 3.6e7;

  /** Flow at which the search starts, m³/s: about 1 m/s in the pipes of a pond. */
  private static final double START_FLOW_M3_PER_S = 1e-3;

  /** No search begins at less: many laws are nearly level there. */
  private static final double SMALL_FLOW_M3_PER_S = 1e-7;

  private static final double TINY_FLOW_M3_PER_S = 1e-9;

  /**
   * So many steps of a walk are taken whole where flows are known: which links are held at a bound
   * is mostly found in fewer steps so than by stopping at the first of them.
   */
  private static final int WHOLE_STEPS = 6;

  private static final int MOST_ROUNDS = 40;
  private static final int MOST_RESTARTS = 4;

  private final Arrangement net;
  private final State state;
  private int iterations;

  /** So many steps of a walk are taken whole. */
  private int wholeSteps;

  /** Links that were pinned for a flow next to nothing and turned out to carry it. */
  private final boolean[] released;

  private CutOffs cutOffs;

  private Balancer(BalanceProblem problem) {
    this.net = new Arrangement(problem);
    this.state = new State(net);
    this.released = new boolean[net.linkCount];
  }

  /**
   * The balance of a problem.
   *
   * @throws SearchFailed if none was found in the allowed number of steps
   */
  public static Balance balance(BalanceProblem problem) {
    return new Balancer(problem).run();
  }

  private Balance run() {
    double steepness = steepness();
    for (int restart = 0; restart < MOST_RESTARTS; restart++) {
      boolean near = restart == 0 && !Arrays.stream(net.near).allMatch(Double::isNaN);
      wholeSteps = near ? WHOLE_STEPS : 1;
      start(near);
      walk(steepness);
      for (int round = 0; round < MOST_ROUNDS; round++) {
        pinWhatIsBeyondItsBounds();
        walk(steepness);
        if (!releaseWhatWouldOpen() && nothingAtItsBounds()) {
          Balance balance = answer();
          if (isConverged(balance)) {
            return balance;
          }
        }
      }
      steepness *= 100;
    }
    Balance last = answer();
    throw new SearchFailed(iterations, last.flowErrorM3PerS(), last.headErrorM());
  }

  private double steepness() {
    double steepest = USUAL_STEEPNESS;
    for (int k = 0; k < net.linkCount; k++) {
      double slope = net.law[k].slopeAt(Math.min(START_FLOW_M3_PER_S, net.greatest[k] / 2));
      if (Double.isFinite(slope)) {
        steepest = Math.max(steepest, 10 * slope);
      }
    }
    return steepest;
  }

  private void start(boolean near) {
    for (int k = 0; k < net.linkCount; k++) {
      boolean shut = net.least[k] == net.greatest[k];
      state.pin[k] = shut ? Pin.AT_LEAST : Pin.FREE;
      double usual = Math.min(START_FLOW_M3_PER_S, shut ? net.greatest[k] : net.greatest[k] / 2);
      state.flow[k] = near && !shut ? near(k, usual) : usual;
    }
    cutOffs = CutOffs.mark(net, state);
  }

  /** A flow that is known to be near; where it lies at a bound, just beyond it. */
  private double near(int link, double usual) {
    double known = net.near[link];
    if (known <= net.least[link]) {
      return net.least[link] - TINY_FLOW_M3_PER_S;
    }
    if (known >= net.greatest[link]) {
      return net.greatest[link] + TINY_FLOW_M3_PER_S;
    }
    return Math.abs(known) > SMALL_FLOW_M3_PER_S ? known : Math.min(SMALL_FLOW_M3_PER_S, usual);
  }

  private void walk(double steepness) {
    iterations += new NewtonWalk(net, state, steepness, wholeSteps).walk();
    cutOffs.settleDeadEnds();
  }

  private void pinWhatIsBeyondItsBounds() {
    double tiny = tinyFlow();
    for (int k = 0; k < net.linkCount; k++) {
      double inside = released[k] ? 0 : tiny;
      if (state.isFree(k) && state.flow[k] <= net.least[k] + inside) {
        state.pin[k] = Pin.AT_LEAST;
        state.flow[k] = net.least[k];
      } else if (state.isFree(k) && state.flow[k] >= net.greatest[k] - inside) {
        state.pin[k] = Pin.AT_GREATEST;
        state.flow[k] = net.greatest[k];
      }
    }
    cutOffs = CutOffs.mark(net, state);
  }

  private double tinyFlow() {
    return Math.max(1e-16, 1e-14 * state.largestFlow());
  }

  private boolean nothingAtItsBounds() {
    for (int k = 0; k < net.linkCount; k++) {
      boolean inside = state.flow[k] > net.least[k] && state.flow[k] < net.greatest[k];
      if (state.isFree(k) && !inside) {
        return false;
      }
    }
    return true;
  }

  private boolean releaseWhatWouldOpen() {
    boolean anyReleased = false;
    double tolerance = state.headTolerance() / 2;
    for (int k = 0; k < net.linkCount; k++) {
      if (pinnedHeadError(k) > tolerance) {
        boolean atLeast = state.pin[k] == Pin.AT_LEAST;
        state.pin[k] = Pin.FREE;
        double inside = Math.min(1e-6, (net.greatest[k] - net.least[k]) / 1e3);
        state.flow[k] += atLeast ? inside : -inside;
        released[k] = true;
        anyReleased = true;
      }
    }
    return anyReleased;
  }

  /** By how much the head over a pinned link exceeds what keeps it pinned, m. */
  private double pinnedHeadError(int link) {
    boolean holdsAnyHead = net.least[link] == net.greatest[link];
    if (holdsAnyHead || !cutOffs.isDropKnown(link)) {
      return 0;
    }
    double surplus = state.drop(net, link) - net.law[link].headLossAt(state.flow[link]);
    if (state.pin[link] == Pin.AT_LEAST) {
      return Math.max(0, surplus);
    }
    return state.pin[link] == Pin.AT_GREATEST ? Math.max(0, -surplus) : 0;
  }

  private boolean isConverged(Balance balance) {
    double flowTolerance =
        Math.max(RELATIVE_FLOW_TOLERANCE * state.largestFlow(), LEAST_FLOW_TOLERANCE_M3_PER_S);
    return balance.flowErrorM3PerS() <= flowTolerance
        && balance.headErrorM() <= state.headTolerance();
  }

  private Balance answer() {
    boolean[] determined = new boolean[net.nodeCount];
    for (int i = 0; i < net.nodeCount; i++) {
      determined[i] = cutOffs.isDetermined(i);
    }
    boolean[] shut = new boolean[net.linkCount];
    for (int k = 0; k < net.linkCount; k++) {
      boolean deadAndShut = state.pin[k] == Pin.DEAD_END && !cutOffs.passesHead(k);
      shut[k] = deadAndShut || (!state.isFree(k) && state.flow[k] == 0 && !cutOffs.passesHead(k));
    }
    return new Balance(
        state.flow, state.head, determined, shut, net.edges, iterations, flowError(), headError());
  }

  private double flowError() {
    double[] surplus = new double[net.nodeCount];
    for (int i = 0; i < net.nodeCount; i++) {
      surplus[i] = -net.draw[i];
    }
    for (int k = 0; k < net.linkCount; k++) {
      surplus[net.from[k]] -= state.flow[k];
      surplus[net.to[k]] += state.flow[k];
    }
    double largest = 0;
    for (int i = 0; i < net.nodeCount; i++) {
      largest = Math.max(largest, net.held[i] ? 0 : Math.abs(surplus[i]));
    }
    return largest;
  }

  private double headError() {
    double largest = 0;
    for (int k = 0; k < net.linkCount; k++) {
      boolean open = state.isFree(k) || cutOffs.passesHead(k);
      double error =
          open
              ? Math.abs(state.drop(net, k) - net.law[k].headLossAt(state.flow[k]))
              : pinnedHeadError(k);
      largest = Math.max(largest, error);
    }
    return largest;
  }
}
