package rillwright.solver.balance;

import rillwright.solver.balance.content.StepSearch;
import rillwright.solver.balance.linear.NodalSystem;

/**
 * Newton's method on flows and heads together for the links that are free.
 *
 * <p>Each step solves AᵀD⁻¹A H = AᵀD⁻¹h − Aᵀq − draw for the heads and takes Δq = (ΔH − h)/D; from
 * the second step on the flows balance at every node and stay so along the step, whose length
 * {@link StepSearch} finds.
 *
 * <p>Source: Todini, E. and Pilati, S. (1988), "A gradient algorithm for the analysis of pipe
 * networks", in Computer Applications in Water Supply, vol. 1, Research Studies Press, 1–20 (from
 * memory).
 */
final class NewtonWalk {
  private static final int MOST_STEPS = 150;

  /** Below this head error, m, a walk ends as soon as a step no longer halves the error. */
  private static final double GOOD_ENOUGH_M = 1e-9;

  /** Below this head error, m, a walk ends; ten times as much is let pass after each ten steps. */
  private static final double EXACT_M = 1e-13;

  private final Arrangement net;
  private final State state;
  private final double steepness;
  private final double[] slope;
  private final double[] loss;
  private final double[] change;

  NewtonWalk(Arrangement net, State state, double steepness) {
    this.net = net;
    this.state = state;
    this.steepness = steepness;
    this.slope = new double[net.linkCount];
    this.loss = new double[net.linkCount];
    this.change = new double[net.linkCount];
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
        change[k] = state.isFree(k) ? (state.drop(net, k) - loss[k]) / slope[k] : 0;
      }
      double length = step == 1 ? 1 : StepSearch.lengthOf(this::contentSlopeAt);
      for (int k = 0; k < net.linkCount; k++) {
        state.flow[k] += length * change[k];
      }
      double error = headError();
      boolean stalled = error <= GOOD_ENOUGH_M && error > before / 2;
      if (step > 1 && (error <= exactEnough(step) || stalled)) {
        return step;
      }
      before = error;
    }
    return MOST_STEPS;
  }

  /** Where rounding throws the search about, the last digits are not to be had. */
  private static double exactEnough(int step) {
    return Math.min(GOOD_ENOUGH_M / 2, EXACT_M * Math.pow(10, 0.1 * step));
  }

  private void linearise() {
    double leastSlope = ExtendedLaw.leastSlope(state.largestHead());
    for (int k = 0; k < net.linkCount; k++) {
      if (state.isFree(k)) {
        loss[k] = ExtendedLaw.headLoss(net, k, state.flow[k], steepness);
        slope[k] = ExtendedLaw.slope(net, k, state.flow[k], steepness, leastSlope);
      }
    }
  }

  private boolean solveHeads() {
    NodalSystem system = net.system;
    system.clear();
    boolean[] touched = new boolean[net.nodeCount];
    for (int k = 0; k < net.linkCount; k++) {
      int i = net.from[k];
      int j = net.to[k];
      double conductance = state.isFree(k) ? 1 / slope[k] : 0;
      double base = state.isFree(k) ? state.flow[k] - loss[k] * conductance : state.flow[k];
      system.addToRightHandSide(i, state.anchored[i] ? 0 : -base);
      system.addToRightHandSide(j, state.anchored[j] ? 0 : base);
      if (conductance == 0 || i == j) {
        continue;
      }
      couple(system, k, i, j, conductance);
      touched[i] = true;
      touched[j] = true;
    }
    for (int i = 0; i < net.nodeCount; i++) {
      if (state.anchored[i] || !touched[i]) {
        system.addToDiagonal(i, 1);
        system.addToRightHandSide(i, state.anchored[i] ? state.head[i] : 0);
      } else {
        system.addToRightHandSide(i, -net.draw[i]);
      }
    }
    return system.solve(state.head);
  }

  private void couple(NodalSystem system, int link, int i, int j, double conductance) {
    if (!state.anchored[i]) {
      system.addToDiagonal(i, conductance);
    }
    if (!state.anchored[j]) {
      system.addToDiagonal(j, conductance);
    }
    if (!state.anchored[i] && !state.anchored[j]) {
      system.subtractFromEdge(link, conductance);
    } else if (!state.anchored[i]) {
      system.addToRightHandSide(i, conductance * state.head[j]);
    } else if (!state.anchored[j]) {
      system.addToRightHandSide(j, conductance * state.head[i]);
    }
  }

  private double contentSlopeAt(double length) {
    double sum = 0;
    for (int k = 0; k < net.linkCount; k++) {
      if (change[k] != 0) {
        double flow = state.flow[k] + length * change[k];
        sum += (ExtendedLaw.headLoss(net, k, flow, steepness) - state.drop(net, k)) * change[k];
      }
    }
    return sum;
  }

  private double headError() {
    double largest = 0;
    for (int k = 0; k < net.linkCount; k++) {
      if (state.isFree(k)) {
        double error = state.drop(net, k) - ExtendedLaw.headLoss(net, k, state.flow[k], steepness);
        largest = Math.max(largest, Math.abs(error));
      }
    }
    return largest;
  }
}
