package rillwright.cli.study.duty;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.site.Running;
import rillwright.cli.study.PumpSource;
import rillwright.cli.study.Turnover;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.Network;

/**
 * What a duty will take to run, whatever pump makes it: between a good and a poor one.
 *
 * @param waterPowerW that flow and head are, W
 * @param running how long the pump runs and what electricity costs
 * @param turnover of the basin that feeds the pump, where there is one whose volume is known
 */
public record DutyRunning(double waterPowerW, Running running, Optional<Turnover> turnover) {
  /** A duty of less than this is one for a tiny pump, W in the water. */
  private static final double TINY_W = 30;

  /** Of a duty with the other falls throttled; empty if that is out of reach. */
  public static Optional<DutyRunning> of(DutyAnswer answer) {
    return answer.duty().throttled().map(duty -> of(duty.flowM3PerS(), duty.headM(), answer));
  }

  private static DutyRunning of(double flowM3PerS, double headM, DutyAnswer answer) {
    Running running = answer.running();
    Network network = answer.network();
    double weight = network.water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
    return new DutyRunning(
        Math.max(0, weight * flowM3PerS * headM),
        running,
        PumpSource.of(network, answer.place())
            .flatMap(basin -> Turnover.of(basin, flowM3PerS, running.hoursADay())));
  }

  /**
   * What a good pump for this duty turns of its power into flow and head; common practice, no
   * source.
   */
  public double goodWireToWater() {
    return waterPowerW < TINY_W ? 0.30 : 0.45;
  }

  /**
   * What a poor pump for this duty turns of its power into flow and head; common practice, no
   * source.
   */
  public double poorWireToWater() {
    return waterPowerW < TINY_W ? 0.10 : 0.25;
  }

  /** What the best reach; empty for small ones, which none is. */
  public OptionalDouble bestWireToWater() {
    return waterPowerW < TINY_W ? OptionalDouble.empty() : OptionalDouble.of(0.60);
  }

  /** Electrical input, W, at a wire-to-water efficiency above 0. */
  public double powerW(double wireToWater) {
    return waterPowerW / wireToWater;
  }

  /** Energy of a year, kWh, at a wire-to-water efficiency above 0. */
  public double energyKwhPerYear(double wireToWater) {
    return running.energyKwhPerYear(powerW(wireToWater));
  }

  /** Electricity of a year at a wire-to-water efficiency above 0; empty without a price. */
  public OptionalDouble costPerYear(double wireToWater) {
    return running.costPerYear(powerW(wireToWater));
  }
}
