package rillwright.solver.stream.time;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;

/**
 * Chambers that are drawn down to their intake give no more than comes in. Just above it they pass
 * from the one to the other smoothly, and so that the level comes to rest there without hurry: a
 * small chamber would else have to be followed in steps of milliseconds.
 */
final class Intakes {
  /** Height above the intake in which a chamber begins to give less, m. */
  private static final double RAMP_M = 1e-3;

  private final Map<PointName, Double> intakeM = new LinkedHashMap<>();

  Intakes(Network network) {
    network.points(Chamber.class).stream()
        .forEach(chamber -> intakeM.put(chamber.name(), chamber.intakeM()));
  }

  /**
   * By what share each part of a network runs slower for it.
   *
   * @param gains of each part: what waters gain (or, negative, give) by it, m³/s
   * @param levelM of the waters
   */
  double[] shares(List<Map<PointName, Double>> gains, Map<PointName, Double> levelM) {
    double[] shares = new double[gains.size()];
    Arrays.fill(shares, 1);
    for (Map.Entry<PointName, Double> intake : intakeM.entrySet()) {
      PointName chamber = intake.getKey();
      Double level = levelM.get(chamber);
      double above = level == null ? 1 : (level - intake.getValue()) / RAMP_M;
      if (above < 1) {
        double share = share(chamber, gains, Math.max(0, above));
        for (int i = 0; i < shares.length; i++) {
          boolean draws = gains.get(i).getOrDefault(chamber, 0.0) < 0;
          shares[i] = draws ? Math.min(shares[i], share) : shares[i];
        }
      }
    }
    return shares;
  }

  /** The share of what is drawn that a chamber can give, at a share of the ramp. */
  private static double share(PointName chamber, List<Map<PointName, Double>> gains, double above) {
    double comes = 0;
    double drawn = 0;
    for (Map<PointName, Double> part : gains) {
      double gain = part.getOrDefault(chamber, 0.0);
      comes += Math.max(0, gain);
      drawn += Math.max(0, -gain);
    }
    if (drawn <= comes) {
      return 1;
    }
    double smooth = above * above * (3 - 2 * above);
    return (comes + (drawn - comes) * smooth) / drawn;
  }
}
