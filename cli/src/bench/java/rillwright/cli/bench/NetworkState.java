package rillwright.cli.bench;

import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What is measured on each of the networks. */
@State(Scope.Benchmark)
public abstract class NetworkState {
  @Param({
    "TREE 12", "TREE 100", "TREE 1000", "TREE 10000", "TREE 100000",
    "LOOPS 12", "LOOPS 100", "LOOPS 1000", "LOOPS 10000", "LOOPS 100000",
    "GRID 12", "GRID 100", "GRID 1000", "GRID 10000", "GRID 100000"
  })
  public String network;
}
