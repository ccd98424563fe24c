package rillwright.cli.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** One Newton step on all flows and heads at once by Hipparchus' decomposition of a full matrix. */
@State(Scope.Benchmark)
public class DenseBenchmark {
  @Param({"LOOPS 12", "LOOPS 100"})
  public String network;

  /** A law between two numbered points; the second is outside where it is −1. */
  private record Link(int from, int to, HeadLaw law) {}

  private final List<Link> links = new ArrayList<>();
  private boolean[] held;

  /** The equations. */
  @Setup
  public void prepare() {
    Network read = Networks.of(network);
    Map<PointName, Integer> numbers = Networks.numbers(read);
    read.lines()
        .forEach(
            line ->
                links.add(
                    new Link(
                        numbers.get(line.from()), numbers.get(line.to()), read.lawOf(line))));
    held = new boolean[read.points().size()];
    for (Point point : read.points()) {
      int number = numbers.get(point.name());
      held[number] = point.heldHeadM().isPresent();
      point.spill().ifPresent(spill -> links.add(new Link(number, -1, spill.law())));
    }
  }

  /** Rows: what each law takes, what flows together at each point. */
  @Benchmark
  public RealVector step() {
    int size = links.size() + held.length;
    double[][] rows = new double[size][size];
    for (int k = 0; k < links.size(); k++) {
      Link link = links.get(k);
      rows[k][k] = -link.law.slopeAt(Math.max(1e-4, link.law.leastFlow()));
      for (int end : new int[] {link.from, link.to}) {
        if (end >= 0) {
          int sign = end == link.from ? 1 : -1;
          rows[k][links.size() + end] = sign;
          rows[links.size() + end][k] = held[end] ? 0 : -sign;
        }
      }
    }
    for (int i = 0; i < held.length; i++) {
      rows[links.size() + i][links.size() + i] = held[i] ? 1 : 0;
    }
    return new LUDecomposition(new Array2DRowRealMatrix(rows, false), 0)
        .getSolver()
        .solve(new ArrayRealVector(size, 1e-4));
  }
}
