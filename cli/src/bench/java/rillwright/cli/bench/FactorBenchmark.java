package rillwright.cli.bench;

import java.util.Arrays;
import java.util.Random;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import rillwright.solver.balance.linear.EdgePattern;
import rillwright.solver.balance.linear.NodalSystem;
import rillwright.solver.network.Network;

/** One Newton step's matrix here: numbers put in, factored, solved; its pattern is known. */
@State(Scope.Benchmark)
public class FactorBenchmark {
  @Param({
    "TREE 12", "TREE 100", "TREE 1000", "TREE 10000", "TREE 100000",
    "LOOPS 12", "LOOPS 100", "LOOPS 1000", "LOOPS 10000", "LOOPS 100000",
    "GRID 12", "GRID 100", "GRID 1000", "GRID 10000", "GRID 100000"
  })
  public String network;

  private int[] from;
  private int[] to;
  private double[] conductance;
  private boolean[] anchored;
  private double[] heads;
  private NodalSystem ours;
  private double[] rightHandSide;

  /** The same matrix for each. */
  @Setup
  public void prepare() {
    Network read = Networks.of(network);
    int size = read.points().size();
    from = Networks.ends(read, true);
    to = Networks.ends(read, false);
    Random random = new Random(1);
    conductance = random.doubles(from.length, 1e-5, 1e-3).toArray();
    anchored = new boolean[size];
    heads = new double[size];
    ours = new NodalSystem(new EdgePattern(size, from, to));
    rightHandSide = new double[size];
    Arrays.fill(rightHandSide, 1e-4);
  }

  /** Ordered by least degree, EJML's Cholesky with its pattern kept. */
  @Benchmark
  public double[] ours() {
    ours.clear();
    for (int k = 0; k < from.length; k++) {
      ours.couple(k, from[k], to[k], conductance[k], anchored);
    }
    for (int i = 0; i < heads.length; i++) {
      ours.addToDiagonal(i, 1e-4);
      ours.addToRightHandSide(i, rightHandSide[i]);
    }
    ours.solve(heads);
    return heads;
  }
}
