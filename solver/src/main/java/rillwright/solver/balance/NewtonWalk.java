package rillwright.solver.balance;

import java.util.Arrays;
import rillwright.solver.balance.content.StepSearch;
import rillwright.solver.balance.linear.NodalSystem;

/**
 * Newton's method on flows and heads together for the links that are free.
 *
 * <p>Each step solves AᵀD⁻¹A δH = −Aᵀ(q + D⁻¹e) − draw for the changes of the heads, e = ΔH − h
 * being the head errors, and takes δq = D⁻¹(e + A δH); from the second step on the flows balance at
 * every node and stay so along the step, whose length {@link StepSearch} finds. Solving for changes
 * rather than heads keeps the flows' digits where heads are great or slopes small.
 *
 * <p>Source: Todini, E. and Pilati, S. (1988), "A gradient algorithm for the analysis of pipe
 * networks", in Computer Applications in Water Supply, vol. 1, Research Studies Press, 1–20 (from
 * memory).
 */
final class NewtonWalk {
  private static final int MOST_STEPS = 150;

  /** Below this head error, m, a walk ends; ten times as much is let pass after each ten steps. */
  private static final double EXACT_M = 1e-13;

  private final Arrangement net;
  private final State state;
  private final double steepness;
  private final int wholeSteps;
  private final double[] slope;

  /** Head drop over each link less its law's, m. */
  private final double[] error;

  private final double[] change;
  private final double[] headChange;

  /** What each law takes at the flow where the walk stands, and at the one that was last tried. */
  private final double[] lossHere;

  private final double[] triedFlow;
  private final double[] lossTried;

  /**
   * A walk.
   *
   * @param wholeSteps so many steps are taken whole, at least the first: from the second on the
   *     search for a step's length needs flows that balance
   */
  NewtonWalk(Arrangement net, State state, double steepness, int wholeSteps) {
    this.wholeSteps = wholeSteps;
    this.net = net;
    this.state = state;
    this.steepness = steepness;
    this.slope = new double[net.linkCount];
    this.error = new double[net.linkCount];
    this.change = new double[net.linkCount];
    this.headChange = new double[net.nodeCount];
    this.lossHere = new double[net.linkCount];
    this.triedFlow = new double[net.linkCount];
    this.lossTried = new double[net.linkCount];
    Arrays.fill(triedFlow, Double.NaN);
  }

  /** Walks to the balance of the free links; returns the number of steps. */
  int walk() {
    double before = Double.POSITIVE_INFINITY;
    for (int step = 1; step <= MOST_STEPS; step++) {
      linearise();
      if (!solveHeads()) {
        return step;
      }
      for (int k = 0; k < net.linkCount; k++) {
        double dropChange = headChange[net.from[k]] - headChange[net.to[k]];
        change[k] = state.isFree(k) ? (error[k] + dropChange) / slope[k] : 0;
      }
      for (int i = 0; i < net.nodeCount; i++) {
        state.head[i] += headChange[i];
      }
      double length = step <= wholeSteps ? 1 : StepSearch.lengthOf(this::contentSlopeAt);
      boolean moved = false;
      for (int k = 0; k < net.linkCount; k++) {
        double flow = state.flow[k] + length * change[k];
        moved |= flow != state.flow[k];
        state.flow[k] = flow;
      }
      double largest = largestError();
      double goodEnough = state.headTolerance() / 2;
      boolean stalled = largest <= goodEnough && largest > before / 2;
      if (step > 1 && (largest <= exactEnough(step, goodEnough) || stalled || !moved)) {
        return step;
      }
      before = largest;
    }
    return MOST_STEPS;
  }

  /** Where rounding throws the search about, the last digits are not to be had. */
  private static double exactEnough(int step, double goodEnough) {
    return Math.min(goodEnough, EXACT_M * Math.pow(10, 0.1 * step));
  }

  private void linearise() {
    Spans.fold(net.linkCount, this::linearise, Double::sum);
  }

  private double linearise(int from, int to) {
    for (int k = from; k < to; k++) {
      if (state.isFree(k)) {
        lossHere[k] = loss(k, state.flow[k]);
        error[k] = state.drop(net, k) - lossHere[k];
        slope[k] = ExtendedLaw.slope(net, k, state.flow[k], steepness);
      }
    }
    return 0;
  }

  /** Finds the change of each head; false if there is none to be had. */
  private boolean solveHeads() {
    NodalSystem system = net.system;
    system.clear();
    for (int k = 0; k < net.linkCount; k++) {
      int i = net.from[k];
      int j = net.to[k];
      double conductance = state.isFree(k) ? 1 / slope[k] : 0;
      double flow = state.flow[k] + (state.isFree(k) ? error[k] * conductance : 0);
      system.addToRightHandSide(i, state.anchored[i] ? 0 : -flow);
      system.addToRightHandSide(j, state.anchored[j] ? 0 : flow);
      if (conductance != 0 && i != j) {
        system.couple(k, i, j, conductance, state.anchored);
      }
    }
    for (int i = 0; i < net.nodeCount; i++) {
      if (state.anchored[i]) {
        system.addToDiagonal(i, 1);
      } else {
        system.addToRightHandSide(i, -net.draw[i]);
      }
    }
    return system.solve(headChange);
  }

  private double contentSlopeAt(double length) {
    return Spans.fold(net.linkCount, (from, to) -> contentSlopeAt(length, from, to), Double::sum);
  }

  private double contentSlopeAt(double length, int from, int to) {
    double sum = 0;
    for (int k = from; k < to; k++) {
      if (change[k] != 0) {
        double flow = state.flow[k] + length * change[k];
        double loss = flow == state.flow[k] ? lossHere[k] : loss(k, flow);
        sum += (loss - state.drop(net, k)) * change[k];
      }
    }
    return sum;
  }

  private double largestError() {
    return Spans.fold(net.linkCount, this::largestError, Math::max);
  }

  private double largestError(int from, int to) {
    double largest = 0;
    for (int k = from; k < to; k++) {
      if (state.isFree(k)) {
        largest = Math.max(largest, Math.abs(state.drop(net, k) - loss(k, state.flow[k])));
      }
    }
    return largest;
  }

  /** What a law takes; the last flow that was tried is mostly asked for again. */
  private double loss(int link, double flow) {
    if (flow != triedFlow[link]) {
      triedFlow[link] = flow;
      lossTried[link] = ExtendedLaw.headLoss(net, link, flow, steepness);
    }
    return lossTried[link];
  }
}
