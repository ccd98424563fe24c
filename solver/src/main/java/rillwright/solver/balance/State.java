package rillwright.solver.balance;

/**
 * Where the iteration stands: flows, heads, and which links are pinned to a flow and which nodes to
 * a head.
 */
final class State {
  /** What holds a link's flow. */
  enum Pin {
    /** Nothing: its law and the heads at its ends find the flow. */
    FREE,
    /** The least flow that its law allows. */
    AT_LEAST,
    /** The greatest flow that its law allows. */
    AT_GREATEST,
    /** It leads to nothing that takes or gives water. */
    DEAD_END
  }

  final double[] flow;
  final double[] head;
  final Pin[] pin;

  /**
   * Whether each node's head stays as it is: held by the problem, or the reference of a part that
   * is cut off.
   */
  final boolean[] anchored;

  State(Arrangement net) {
    flow = new double[net.linkCount];
    head = net.heldHead.clone();
    pin = new Pin[net.linkCount];
    anchored = net.held.clone();
    for (int k = 0; k < net.linkCount; k++) {
      pin[k] = net.least[k] == net.greatest[k] ? Pin.AT_LEAST : Pin.FREE;
    }
  }

  boolean isFree(int link) {
    return pin[link] == Pin.FREE;
  }

  double drop(Arrangement net, int link) {
    return head[net.from[link]] - head[net.to[link]];
  }

  /**
   * The greatest head error of a balance, m: 1e-9, or what double precision leaves of heads beyond
   * a kilometre.
   */
  double headTolerance() {
    return Math.max(1e-9, 1e-12 * largestHead());
  }

  double largestFlow() {
    double largest = 0;
    for (double q : flow) {
      largest = Math.max(largest, Math.abs(q));
    }
    return largest;
  }

  double largestHead() {
    double largest = 0;
    for (double h : head) {
      largest = Math.max(largest, Math.abs(h));
    }
    return largest;
  }
}
