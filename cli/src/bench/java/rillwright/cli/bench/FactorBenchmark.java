package rillwright.cli.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;
import rillwright.solver.balance.linear.EdgePattern;
import rillwright.solver.balance.linear.NodalSystem;

/** One Newton step's matrix here: numbers put in, factored, solved; its pattern is known. */
public class FactorBenchmark extends NetworkState {
  private StepMatrix step;
  private boolean[] anchored;
  private double[] heads;
  private NodalSystem ours;

  /** The pattern. */
  @Setup
  public void prepare() {
    step = StepMatrix.of(network);
    anchored = new boolean[step.size()];
    heads = new double[step.size()];
    ours = new NodalSystem(new EdgePattern(step.size(), step.from(), step.to()));
  }

  /** Ordered by least degree, EJML's Cholesky with its pattern kept. */
  @Benchmark
  public double[] ours() {
    ours.clear();
    for (int k = 0; k < step.from().length; k++) {
      ours.couple(k, step.from()[k], step.to()[k], step.conductance()[k], anchored);
    }
    for (int i = 0; i < heads.length; i++) {
      ours.addToDiagonal(i, StepMatrix.ANCHOR);
      ours.addToRightHandSide(i, step.rightHandSide()[i]);
    }
    ours.solve(heads);
    return heads;
  }
}
