package rillwright.solver.study.diagnosis.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * What everything would read at the sizes of one cause, in one state of the job: at nine sizes
 * evenly over the range (five at rest, two where nothing moves), and at more where a reading moves
 * by more than 1.5 of its standard deviations from one to the next and is not straight between
 * them.
 */
public final class Sweep {
  private static final int FIRST_NODES_RUNNING = 9;

  /** With a valve shut or the pump off most readings stay as they are whatever the size. */
  private static final int FIRST_NODES_AT_REST = 5;

  private static final int MOST_NODES = 65;
  private static final double COARSEST_STEP = 1.5;
  private static final double STRAIGHT = 0.15;

  /** What differs by less, in standard deviations, from the least size to the greatest stays. */
  private static final double UNMOVED = 1e-4;

  private static final double FINEST_SHARE = 1.0 / 1024;

  /** The readings at a size; NaN where there is nothing to read, and in other states. */
  public static final class Node {
    private final double share;
    private final double[] values;

    /**
     * The readings at a size.
     *
     * @param share where in the range the size is, 0 to 1
     */
    Node(double share, double[] values) {
      this.share = share;
      this.values = values;
    }

    double share() {
      return share;
    }

    double[] values() {
      return values;
    }
  }

  private final Scope scope;
  private final Effect effect;
  private final SizeRange sizes;
  private final When state;
  private final List<Node> nodes = new ArrayList<>();
  private double[] shares = {};

  private Sweep(Scope scope, Effect effect, SizeRange sizes, When state) {
    this.scope = scope;
    this.effect = effect;
    this.sizes = sizes;
    this.state = state;
  }

  /** Sweeps a cause over its sizes. */
  public static Sweep of(Scope scope, Effect effect, SizeRange sizes, When state) {
    Sweep sweep = new Sweep(scope, effect, sizes, state);
    boolean running = state.equals(new When.Running());
    Node last = sweep.node(0);
    Node end = sweep.node(1);
    boolean moves = sweep.apart(last, end) > UNMOVED;
    int first = running ? FIRST_NODES_RUNNING : moves ? FIRST_NODES_AT_REST : 2;
    sweep.nodes.add(last);
    for (int i = 1; i < first; i++) {
      Node next = i == first - 1 ? end : sweep.node(i / (first - 1.0));
      sweep.refine(last, next, MOST_NODES / (first - 1));
      sweep.nodes.add(next);
      last = next;
    }
    sweep.shares = sweep.nodes.stream().mapToDouble(Node::share).toArray();
    return sweep;
  }

  private Node node(double share) {
    return new Node(share, scope.predict(List.of(new Scope.Sized(effect, sizes.at(share))), state));
  }

  /** Adds the nodes that are needed between two. */
  private void refine(Node low, Node high, int allowed) {
    boolean fine = high.share() - low.share() <= FINEST_SHARE;
    if (allowed < 1 || fine || apart(low, high) <= COARSEST_STEP) {
      return;
    }
    Node middle = node((low.share() + high.share()) / 2);
    if (apart(middle, halfway(low, high)) <= STRAIGHT) {
      nodes.add(middle);
      return;
    }
    int left = (allowed - 1) / 2;
    refine(low, middle, left);
    nodes.add(middle);
    refine(middle, high, left);
  }

  private static Node halfway(Node low, Node high) {
    return new Node((low.share() + high.share()) / 2, between(low.values(), high.values(), 0.5));
  }

  /** By how many standard deviations any reading differs between two nodes, at most. */
  public double apart(Node one, Node other) {
    double most = 0;
    for (int i = 0; i < scope.size(); i++) {
      if (scope.readables().get(i) instanceof Sight) {
        continue;
      }
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

  /** The nodes, in rising order of size. */
  public List<Node> nodes() {
    return nodes;
  }

  /** The readings at a share of the range, interpolated linearly between the nodes. */
  public double[] valuesAt(double share) {
    int found = Arrays.binarySearch(shares, share);
    if (found >= 0) {
      return nodes.get(found).values();
    }
    Node high = nodes.get(-found - 1);
    Node low = nodes.get(-found - 2);
    double t = (share - low.share()) / (high.share() - low.share());
    return between(low.values(), high.values(), t);
  }

  /** Between two sets of readings; where only one can be read, that of the nearer. */
  public static double[] between(double[] low, double[] high, double t) {
    double[] values = new double[low.length];
    for (int i = 0; i < values.length; i++) {
      boolean oneOnly = Double.isNaN(low[i]) || Double.isNaN(high[i]);
      values[i] = oneOnly ? (t < 0.5 ? low[i] : high[i]) : low[i] + t * (high[i] - low[i]);
    }
    return values;
  }
}
