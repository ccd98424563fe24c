package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.water.Water;

/**
 * A named tap for a pressure gauge; costs nothing, reads static pressure.
 *
 * @param name unique in the file
 * @param elevationM where it sits, m
 * @param bore of the pipe it sits in, where known: its velocity head is taken off
 */
public record Gauge(String name, double elevationM, Optional<Bore> bore) implements Part {
  public Gauge {
    Require.given("name of a gauge", name);
    Require.finite("elevation of a gauge", elevationM, "m");
    Require.given("bore of a gauge", bore);
  }

  @Override
  public String kind() {
    return "gauge";
  }

  /**
   * What it reads, Pa above the air's pressure: the static pressure, its bore's velocity head taken
   * off.
   *
   * @param headM total head there, m
   * @param flowM3PerS flow past it, m³/s
   */
  public double pressurePa(double headM, double flowM3PerS, Water water) {
    double velocityHead = bore.map(b -> b.velocityHeadAt(flowM3PerS)).orElse(0.0);
    return water.densityKgPerM3() * Gravity.STANDARD_M_PER_S2 * (headM - elevationM - velocityHead);
  }

  @Override
  public HeadLaw law(Setting setting) {
    return NoLoss.bothWays();
  }

  @Override
  public Gauge narrowed(double factor) {
    return new Gauge(name, elevationM, bore.map(b -> b.times(factor)));
  }
}
