package rillwright.solver.study.uncertainty;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.network.PointName;

/**
 * What comes out of a network that is not known exactly.
 *
 * @param plan how it was sampled
 * @param falls what is to be expected of each fall and outlet, in the order of the network
 * @param chanceOfAll that all targets are fulfilled at once, 0 to 1; empty without a target
 * @param drivers how much each unknown matters, in the order of the unknowns
 * @param tally how many samples did not end as they should
 * @param contradiction the values of the first sample whose values contradict each other
 */
public record Odds(
    SamplingPlan plan,
    List<FallOdds> falls,
    OptionalDouble chanceOfAll,
    List<Driver> drivers,
    Tally tally,
    Optional<List<Double>> contradiction) {
  public Odds {
    falls = List.copyOf(falls);
    drivers = List.copyOf(drivers);
  }

  /**
   * What is to be expected of a fall or outlet.
   *
   * @param chance that it gets its target, 0 to 1, among the samples that make sense; empty without
   *     a target
   * @param flow over it; empty if no sample has a balance
   */
  public record FallOdds(PointName name, OptionalDouble chance, Optional<FlowSpread> flow) {}

  /**
   * The flows of all samples with a balance.
   *
   * @param p5M3PerS one in twenty has less, m³/s
   * @param p50M3PerS one in two has less, m³/s
   * @param p95M3PerS one in twenty has more, m³/s
   * @param percentilesM3PerS below which 0 %, 1 %, … 100 % lie, m³/s
   */
  public record FlowSpread(
      double p5M3PerS, double p50M3PerS, double p95M3PerS, List<Double> percentilesM3PerS) {
    public FlowSpread {
      percentilesM3PerS = List.copyOf(percentilesM3PerS);
    }
  }

  /**
   * How much one unknown matters by itself.
   *
   * @param varianceShare of the variances of all flows, summed, 0 to 1
   * @param ofFall share of the variance of each fall's flow, 0 to 1, in the order of the falls
   */
  public record Driver(double varianceShare, Map<PointName, Double> ofFall) {
    public Driver {
      ofFall = Collections.unmodifiableMap(new LinkedHashMap<>(ofFall));
    }
  }

  /**
   * Samples that did not end as they should.
   *
   * @param starved balanced, with a chamber drawn down to its intake
   * @param withoutBalance whose network has no balanced state
   * @param notFound whose balance was not found
   * @param contradictory whose values contradict each other; they count for nothing
   */
  public record Tally(int starved, int withoutBalance, int notFound, int contradictory) {}
}
