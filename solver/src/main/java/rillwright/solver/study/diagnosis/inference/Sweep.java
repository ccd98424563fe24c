package rillwright.solver.study.diagnosis.inference;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.SizeRange;

/**
 * What everything would read at the sizes of one cause: at nine sizes evenly over the range, and at
 * more where a reading moves by more than 1.5 of its standard deviations from one to the next,
 * wherever it moves most.
 */
final class Sweep {
  private static final int FIRST_NODES = 9;
  private static final int MOST_NODES = 65;
  private static final double COARSEST_STEP = 1.5;
  private static final double FINEST_SHARE = 1.0 / 1024;

  /**
   * The readings at a size.
   *
   * @param share where in the range the size is, 0 to 1
   */
  record Node(double share, double[] values) {}

  private final Scope scope;
  private final Effect effect;
  private final SizeRange sizes;
  private final List<Node> nodes = new ArrayList<>();

  private Sweep(Scope scope, Effect effect, SizeRange sizes) {
    this.scope = scope;
    this.effect = effect;
    this.sizes = sizes;
  }

  /** The nodes, in rising order of size. */
  static List<Node> nodes(Scope scope, Effect effect, SizeRange sizes) {
    Sweep sweep = new Sweep(scope, effect, sizes);
    for (int i = 0; i < FIRST_NODES; i++) {
      sweep.nodes.add(sweep.node(i / (FIRST_NODES - 1.0)));
    }
    sweep.refine();
    return sweep.nodes;
  }

  private Node node(double share) {
    return new Node(
        share, scope.predict(List.of(new Scope.Sized(effect, sizes.at(share)))));
  }

  private void refine() {
    while (nodes.size() < MOST_NODES) {
      int widest = -1;
      double most = COARSEST_STEP;
      for (int i = 0; i + 1 < nodes.size(); i++) {
        double step = step(nodes.get(i), nodes.get(i + 1));
        if (step > most) {
          most = step;
          widest = i;
        }
      }
      if (widest < 0) {
        return;
      }
      double middle = (nodes.get(widest).share() + nodes.get(widest + 1).share()) / 2;
      nodes.add(widest + 1, node(middle));
    }
  }

  /** By how many standard deviations any reading moves between two nodes, at most. */
  private double step(Node one, Node other) {
    if (other.share() - one.share() <= FINEST_SHARE) {
      return 0;
    }
    double most = 0;
    for (int i = 0; i < scope.size(); i++) {
      double a = one.values()[i];
      double b = other.values()[i];
      if (Double.isNaN(a) != Double.isNaN(b)) {
        most = Math.max(most, 2 * COARSEST_STEP);
      } else if (!Double.isNaN(a)) {
        most = Math.max(most, Math.abs(b - a) / scope.usualDeviation(i, (a + b) / 2));
      }
    }
    return most;
  }
}
