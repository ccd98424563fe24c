package rillwright.solver.balance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.balance.linear.EdgePattern;
import rillwright.solver.law.HeadLaw;

/**
 * What is to be balanced: numbered nodes joined by links.
 *
 * @param nodes node i is the i-th; copied
 * @param links link k is the k-th; copied
 * @param like the edges of a problem like it, if one was balanced: they need not be analysed again
 *     where they are the same
 */
public record BalanceProblem(List<Node> nodes, List<Link> links, Optional<EdgePattern> like) {
  public BalanceProblem {
    nodes = List.copyOf(nodes);
    links = List.copyOf(links);
  }

  /** Like none that is known. */
  public BalanceProblem(List<Node> nodes, List<Link> links) {
    this(nodes, links, Optional.empty());
  }

  /**
   * A node.
   *
   * @param heldHeadM head at which it is held, m; empty where the balance finds it
   * @param drawM3PerS flow taken out here, m³/s; negative puts in; of no account where the head is
   *     held
   */
  public record Node(OptionalDouble heldHeadM, double drawM3PerS) {

    /** Held at a head. */
    public static Node held(double headM) {
      return new Node(OptionalDouble.of(headM), 0);
    }

    /** Whose head the balance finds. */
    public static Node free(double drawM3PerS) {
      return new Node(OptionalDouble.empty(), drawM3PerS);
    }
  }

  /**
   * A link.
   *
   * @param from number of the node that positive flow leaves
   * @param to number of the node that it reaches
   * @param law head at {@code from} less head at {@code to}, by flow
   * @param nearM3PerS flow near which the search begins, m³/s; empty where none is known
   */
  public record Link(int from, int to, HeadLaw law, OptionalDouble nearM3PerS) {

    /** A link of which no flow is known. */
    public Link(int from, int to, HeadLaw law) {
      this(from, to, law, OptionalDouble.empty());
    }
  }
}
