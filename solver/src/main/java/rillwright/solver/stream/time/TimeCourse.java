package rillwright.solver.stream.time;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.PointName;

/**
 * What happens from switch-on until steady and after switch-off.
 *
 * @param moments in order of time
 * @param givenUp where the end is out of reach
 * @param stopsAtS when the pump is switched off, s after switch-on; how far it was followed if that
 *     is given up before
 * @param firstReturnS when the first stream brings home a tenth of what it will, s; empty if none
 *     does
 * @param ranOverM3 water that overflowed from ponds and chambers, m³
 * @param volumeM3 all water of all stores, m³
 * @param volumeErrorM3 by how much that strays at most, from the levels by geometry, m³
 */
public record TimeCourse(
    List<Moment> moments,
    Optional<GivenUp> givenUp,
    double stopsAtS,
    OptionalDouble firstReturnS,
    double ranOverM3,
    double volumeM3,
    double volumeErrorM3) {
  public TimeCourse {
    moments = List.copyOf(moments);
  }

  /**
   * Levels change so fast that they cannot be followed further.
   *
   * @param timeS how far they were followed, s after switch-on
   * @param water the basin, chamber or box with the least surface: its level is the fastest
   */
  public record GivenUp(double timeS, PointName water) {}

  /** Whether it is followed until all is steady and the pump stops. */
  public boolean reachesSteady() {
    return givenUp.isEmpty() || !last().pumping();
  }

  /** The last moment before the pump stops. */
  public Moment steady() {
    return moments.stream().filter(Moment::pumping).reduce((one, later) -> later).orElseThrow();
  }

  /** The last moment of all. */
  public Moment last() {
    return moments.get(moments.size() - 1);
  }

  /**
   * A moment.
   *
   * @param timeS s after switch-on
   * @param pumping whether the pump is on
   * @param levelM levels of basins and of chambers whose area is known
   * @param flowM3PerS over each fall
   * @param returnFlowM3PerS what each stream brings home
   * @param poolHeadM head over the crest of each pool, by its stream and its place in it
   */
  public record Moment(
      double timeS,
      boolean pumping,
      Map<PointName, Double> levelM,
      Map<PointName, Double> flowM3PerS,
      Map<String, Double> returnFlowM3PerS,
      Map<String, Double> poolHeadM) {}
}
