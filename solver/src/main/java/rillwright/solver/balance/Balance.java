package rillwright.solver.balance;

import java.util.OptionalDouble;
import rillwright.solver.balance.linear.EdgePattern;

/** The balanced state of a {@link BalanceProblem}: its answer, its effort and its errors. */
public final class Balance {
  private final double[] flow;
  private final double[] head;
  private final boolean[] determined;
  private final boolean[] shut;
  private final EdgePattern edges;
  private final int iterations;
  private final double flowErrorM3PerS;
  private final double headErrorM;

  Balance(
      double[] flow,
      double[] head,
      boolean[] determined,
      boolean[] shut,
      EdgePattern edges,
      int iterations,
      double flowErrorM3PerS,
      double headErrorM) {
    this.flow = flow.clone();
    this.head = head.clone();
    this.determined = determined.clone();
    this.shut = shut.clone();
    this.edges = edges;
    this.iterations = iterations;
    this.flowErrorM3PerS = flowErrorM3PerS;
    this.headErrorM = headErrorM;
  }

  /**
   * Flow through a link, m³/s, positive from its first node to its second; exactly 0 where it is
   * shut.
   */
  public double flowM3PerS(int link) {
    return flow[link];
  }

  /** Head at a node, m; empty where nothing determines it, as downstream of what is shut. */
  public OptionalDouble headM(int node) {
    return determined[node] ? OptionalDouble.of(head[node]) : OptionalDouble.empty();
  }

  /** Whether a link carries exactly nothing because its law holds it shut. */
  public boolean isShut(int link) {
    return shut[link];
  }

  /** The edges of its problem, for one that is like it. */
  public EdgePattern edges() {
    return edges;
  }

  /** Number of Newton steps. */
  public int iterations() {
    return iterations;
  }

  /** Largest surplus or lack of flow at any node, m³/s, recomputed from the answer. */
  public double flowErrorM3PerS() {
    return flowErrorM3PerS;
  }

  /** Largest error of any link's head, m, recomputed from the laws. */
  public double headErrorM() {
    return headErrorM;
  }
}
