package rillwright.solver.steady;

import java.util.List;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.UnmetDraw;

/** Thrown when a network has no balanced state. */
public final class NoBalance extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Reason reason;

  /** Why there is none. */
  public sealed interface Reason {}

  /** Points that no line joins to a basin, fall or outlet; at least one. */
  public record FloatingPoints(List<PointName> points) implements Reason {}

  /** Draws that no flow in the allowed directions can meet; at least one. */
  public record UnmetDraws(List<UnmetDraw> draws) implements Reason {}

  NoBalance(Reason reason) {
    super(reason.toString());
    this.reason = reason;
  }

  /** Why there is none. */
  public Reason reason() {
    return reason;
  }
}
