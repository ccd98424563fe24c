package rillwright.solver.steady;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.UnmetDraw;

/**
 * Thrown when a network has no balanced state, whoever looks for it: the network is wrong, not the
 * search. A search that should have found one and did not throws {@link
 * rillwright.solver.balance.SearchFailed}.
 */
public final class NoBalance extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Reason reason;

  /** Why there is none. */
  public sealed interface Reason {
    /** A sentence or several: which points, and what they lack; flows in m³/s. */
    String message();
  }

  /** Points that no line joins to a basin, fall or outlet; at least one. */
  public record FloatingPoints(List<PointName> points) implements Reason {
    @Override
    public String message() {
      return points.stream()
          .map(point -> "no line joins \"" + point + "\" to a basin, a fall or an outlet")
          .collect(Collectors.joining("; "));
    }
  }

  /** Draws that no flow in the allowed directions can meet; at least one. */
  public record UnmetDraws(List<UnmetDraw> draws) implements Reason {
    @Override
    public String message() {
      return draws.stream()
          .map(
              draw ->
                  "the draw at \""
                      + draw.point()
                      + "\" is "
                      + draw.drawM3PerS()
                      + " m³/s, of which its lines can carry "
                      + draw.metM3PerS()
                      + " m³/s")
          .collect(Collectors.joining("; "));
    }
  }

  NoBalance(Reason reason) {
    super("no balanced state: " + reason.message());
    this.reason = reason;
  }

  /** Why there is none. */
  public Reason reason() {
    return reason;
  }
}
