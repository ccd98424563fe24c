package rillwright.cli.file.part;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Point;

/**
 * What a part finds around it in its line.
 *
 * @param pipe the line's pipe
 * @param upstream the nearest run upstream of it
 * @param downstream the nearest run after it
 * @param start where the line begins; empty if that is faulty
 */
public record Surroundings(
    PipeSpec pipe,
    Optional<NearbyRun> upstream,
    Optional<NearbyRun> downstream,
    Optional<Point> start) {

  /**
   * A run beside a part.
   *
   * @param bore its inside
   * @param material its material in the catalogue, where it names one itself
   */
  public record NearbyRun(Optional<Bore> bore, Optional<String> material) {}

  /** What the runs find that lie in a line's pipe. */
  public static Surroundings ofRuns(PipeSpec pipe, Optional<Point> start) {
    return new Surroundings(pipe, Optional.empty(), Optional.empty(), start);
  }

  /** The bore that a part without its own stands in: the line's pipe, else the nearest run. */
  Optional<Bore> bore() {
    return pipe.bore().or(() -> nearest().flatMap(NearbyRun::bore));
  }

  /** The material of the pipe around. */
  Optional<String> material() {
    return pipe.material().or(() -> nearest().flatMap(NearbyRun::material));
  }

  /** The bore of the run upstream of it. */
  Optional<Bore> boreBefore() {
    return upstream.flatMap(NearbyRun::bore);
  }

  /** The bore of the run after it. */
  Optional<Bore> boreAfter() {
    return downstream.flatMap(NearbyRun::bore);
  }

  private Optional<NearbyRun> nearest() {
    return upstream.or(() -> downstream);
  }
}
