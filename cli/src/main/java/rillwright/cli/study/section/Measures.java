package rillwright.cli.study.section;

import java.util.OptionalDouble;
import rillwright.solver.law.Gravity;
import rillwright.solver.water.Water;

/**
 * Distance, elevation and heads at a place of a way, in the datum of the file.
 *
 * @param distanceM along the way from its beginning, m: lengths of runs and reaches
 * @param elevationM of the pipe, the crest or the bed, m: straight between those that are known
 * @param source where the elevation comes from
 * @param headM total head, m; empty where nothing determines it
 * @param gaugeHeadM head that a gauge shows, its elevation added, m: total head less the velocity
 *     head of the bore there
 * @param restHeadM where water stands with the pumps off, m; empty where nothing holds it
 * @param shutOffHeadM head against a shut valve at the end, m; empty where no pump makes any
 */
public record Measures(
    double distanceM,
    double elevationM,
    Source source,
    OptionalDouble headM,
    OptionalDouble gaugeHeadM,
    OptionalDouble restHeadM,
    OptionalDouble shutOffHeadM) {

  /** Less than this, m, is below any measurement. */
  private static final double NOTICEABLE_M = 1e-6;

  /** What a gauge shows there, Pa above the air's pressure; empty where it is not known. */
  public OptionalDouble pressurePa(Water water) {
    return source == Source.FILE && gaugeHeadM.isPresent()
        ? OptionalDouble.of(
            water.densityKgPerM3()
                * Gravity.STANDARD_M_PER_S2
                * (gaugeHeadM.getAsDouble() - elevationM))
        : OptionalDouble.empty();
  }

  /** Where an elevation comes from. */
  public enum Source {
    /** The file says it. */
    FILE,
    /** A straight line between what the file says, or from open water. */
    STRAIGHT,
    /** Nothing that the file says: it is drawn somewhere. */
    ASSUMED
  }

  /**
   * Whether the pipe, as drawn, lies above the head that a gauge would show there; nothing is said
   * of a pipe whose elevation is assumed.
   */
  public boolean isUnderSuction() {
    return source != Source.ASSUMED
        && gaugeHeadM.isPresent()
        && gaugeHeadM.getAsDouble() < elevationM - NOTICEABLE_M;
  }
}
