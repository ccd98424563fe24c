package rillwright.cli.bench;

import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;

/**
 * The numbers of one Newton step's matrix on a network: the same for all that factor it.
 *
 * @param from first node of each edge
 * @param to second node of each edge
 * @param conductance of each edge
 * @param rightHandSide of each node
 */
record StepMatrix(int[] from, int[] to, double[] conductance, double[] rightHandSide) {
  /** What is added to each diagonal. */
  static final double ANCHOR = 1e-4;

  static StepMatrix of(String network) {
    Network read = Networks.of(network);
    Map<PointName, Integer> numbers = Networks.numbers(read);
    int[] from = read.lines().stream().mapToInt(line -> numbers.get(line.from())).toArray();
    int[] to = read.lines().stream().mapToInt(line -> numbers.get(line.to())).toArray();
    double[] rightHandSide = new double[read.points().size()];
    Arrays.fill(rightHandSide, 1e-4);
    double[] conductance = new Random(1).doubles(from.length, 1e-5, 1e-3).toArray();
    return new StepMatrix(from, to, conductance, rightHandSide);
  }

  /** Number of nodes. */
  int size() {
    return rightHandSide.length;
  }
}
