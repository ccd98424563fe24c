package rillwright.solver.balance;

import java.util.ArrayDeque;
import java.util.Arrays;
import rillwright.solver.balance.State.Pin;

/**
 * What the pinned links cut off: dead ends, whose flow is exactly 0, and parts without a held head,
 * of which one node serves as the reference.
 */
final class CutOffs {
  private final Arrangement net;
  private final State state;

  /** Dead ends in the order in which they were found, and the end of each that leads nowhere. */
  private final int[] deadLinks;

  private final int[] deadNodes;
  private int deadCount;

  /**
   * A node of the same part as node i, the part's root for the root; length number of nodes and 1.
   */
  private final int[] part;

  private CutOffs(Arrangement net, State state) {
    this.net = net;
    this.state = state;
    this.deadLinks = new int[net.linkCount];
    this.deadNodes = new int[net.linkCount];
    this.part = new int[net.nodeCount + 1];
  }

  /** Finds them for the pins of a state, and marks them in it. */
  static CutOffs mark(Arrangement net, State state) {
    CutOffs cutOffs = new CutOffs(net, state);
    cutOffs.releaseDeadEnds();
    cutOffs.findDeadEnds();
    cutOffs.findParts();
    return cutOffs;
  }

  private void releaseDeadEnds() {
    for (int k = 0; k < net.linkCount; k++) {
      if (state.pin[k] == Pin.DEAD_END) {
        state.pin[k] = Pin.FREE;
      }
    }
  }

  private void findDeadEnds() {
    int[] ways = new int[net.nodeCount];
    boolean[] quiet = new boolean[net.nodeCount];
    for (int i = 0; i < net.nodeCount; i++) {
      quiet[i] = !net.held[i] && net.draw[i] == 0;
    }
    for (int k = 0; k < net.linkCount; k++) {
      int count = state.isFree(k) ? 1 : 0;
      ways[net.from[k]] += count;
      ways[net.to[k]] += count;
      if (!state.isFree(k) && state.flow[k] != 0) {
        quiet[net.from[k]] = false;
        quiet[net.to[k]] = false;
      }
    }
    ArrayDeque<Integer> ends = new ArrayDeque<>();
    for (int i = 0; i < net.nodeCount; i++) {
      if (quiet[i] && ways[i] == 1) {
        ends.add(i);
      }
    }
    while (!ends.isEmpty()) {
      int node = ends.poll();
      int link = onlyFreeLinkAt(node);
      if (link < 0) {
        continue;
      }
      state.pin[link] = Pin.DEAD_END;
      state.flow[link] = 0;
      deadLinks[deadCount] = link;
      deadNodes[deadCount++] = node;
      int other = net.from[link] == node ? net.to[link] : net.from[link];
      ways[other]--;
      if (quiet[other] && ways[other] == 1) {
        ends.add(other);
      }
    }
  }

  private int onlyFreeLinkAt(int node) {
    for (int k : net.linksAt[node]) {
      if (state.isFree(k)) {
        return k;
      }
    }
    return -1;
  }

  /**
   * Whether a dead end passes head on: its law lets water both ways, so that at no flow its head
   * loss is known.
   */
  boolean passesHead(int link) {
    return state.pin[link] == Pin.DEAD_END && net.least[link] < 0 && net.greatest[link] > 0;
  }

  /**
   * Joins what free links join and anchors a node of each part without a held head; then joins open
   * dead ends, whose heads follow. All held nodes are one part, the last one.
   */
  private void findParts() {
    Arrays.setAll(part, i -> i < heldPart() && net.held[i] ? heldPart() : i);
    for (int k = 0; k < net.linkCount; k++) {
      if (state.isFree(k)) {
        join(net.from[k], net.to[k]);
      }
    }
    for (int i = 0; i < net.nodeCount; i++) {
      state.anchored[i] = net.held[i] || partOf(i) == i;
    }
    for (int k = 0; k < net.linkCount; k++) {
      if (passesHead(k)) {
        join(net.from[k], net.to[k]);
      }
    }
  }

  private void join(int one, int other) {
    int onePart = partOf(one);
    int otherPart = partOf(other);
    part[Math.min(onePart, otherPart)] = Math.max(onePart, otherPart);
  }

  private int heldPart() {
    return net.nodeCount;
  }

  private int partOf(int node) {
    int root = node;
    while (part[root] != root) {
      part[root] = part[part[root]];
      root = part[root];
    }
    return root;
  }

  /** Gives the nodes of dead ends their heads, nearest first. */
  void settleDeadEnds() {
    for (int d = deadCount - 1; d >= 0; d--) {
      int link = deadLinks[d];
      int node = deadNodes[d];
      double loss = net.law[link].headLossAt(0);
      boolean downstream = net.to[link] == node;
      state.head[node] =
          downstream ? state.head[net.from[link]] - loss : state.head[net.to[link]] + loss;
    }
  }

  /** Whether a node's head is tied to one that is held. */
  boolean isDetermined(int node) {
    return partOf(node) == heldPart();
  }

  /** Whether the head between a link's ends is known. */
  boolean isDropKnown(int link) {
    return partOf(net.from[link]) == partOf(net.to[link]);
  }
}
