package rillwright.cli.bench;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;
import rillwright.solver.network.Network;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** The steady state of a network whose laws are known. */
public class BalanceBenchmark extends NetworkState {
  private Network read;

  @Setup
  public void read() {
    read = Networks.of(network);
  }

  @Benchmark
  public SteadyState balance() {
    return SteadyStateFinder.find(read);
  }
}
