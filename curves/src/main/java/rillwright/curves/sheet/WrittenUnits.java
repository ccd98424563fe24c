package rillwright.curves.sheet;

import java.util.Set;
import rillwright.curves.unit.Unit;

/**
 * The units that a sheet is written in.
 *
 * @param flow of its flows
 * @param head of its heads: a length or a pressure
 */
public record WrittenUnits(Unit flow, Unit head) {
  private static final Set<Unit> METRIC =
      Set.of(
          Unit.LITRE_PER_HOUR,
          Unit.LITRE_PER_MINUTE,
          Unit.LITRE_PER_SECOND,
          Unit.CUBIC_METRE_PER_HOUR,
          Unit.CUBIC_METRE_PER_SECOND);

  /** Whether its flows are metric. */
  public boolean isMetric() {
    return METRIC.contains(flow);
  }
}
