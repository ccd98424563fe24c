package rillwright.cli.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.file.site.Running;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/**
 * What running the pumps takes, and how often they turn the water.
 *
 * @param pumps how many places have a pump
 * @param powerW drawn from the wire by all of them, W; empty if the sheet of one gives none
 * @param waterPowerW that becomes flow and head, W; less what a starved pump loses at its inlet
 * @param running how long they run and what electricity costs
 * @param turnovers of the basins that feed pumps and whose volume is known
 */
public record RunningFigures(
    int pumps,
    OptionalDouble powerW,
    double waterPowerW,
    Running running,
    List<Turnover> turnovers) {

  public RunningFigures {
    turnovers = List.copyOf(turnovers);
  }

  /** The figures of a state. */
  public static RunningFigures of(SteadyState state, Running running) {
    int pumps = 0;
    double power = 0;
    double waterPower = 0;
    boolean known = true;
    double weightNPerM3 = state.network().water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
    for (LineState line : state.lines()) {
      double missingM = state.point(line.line().from()).missingHeadM().orElse(0);
      for (PartState part : line.parts()) {
        if (part.part() instanceof Pump pump) {
          OptionalDouble drawn = pump.set().powerAt(part.flowM3PerS());
          pumps++;
          known &= drawn.isPresent();
          power += drawn.orElse(0);
          double headM = pump.set().headAt(part.flowM3PerS()) - missingM;
          waterPower += weightNPerM3 * part.flowM3PerS() * headM;
          missingM = 0;
        }
      }
    }
    return new RunningFigures(
        pumps,
        known ? OptionalDouble.of(power) : OptionalDouble.empty(),
        waterPower,
        running,
        turnovers(state, running.hoursADay()));
  }

  private static List<Turnover> turnovers(SteadyState state, double hoursPerDay) {
    List<Turnover> turnovers = new ArrayList<>();
    for (PointState point : state.points()) {
      if (point.point() instanceof Basin basin) {
        Turnover.of(basin, -point.outflowM3PerS(), hoursPerDay).ifPresent(turnovers::add);
      }
    }
    return turnovers;
  }

  /** Energy of a year, kWh; empty if the power is not known. */
  public OptionalDouble energyKwhPerYear() {
    return powerW.isPresent()
        ? OptionalDouble.of(running.energyKwhPerYear(powerW.getAsDouble()))
        : powerW;
  }

  /** Electricity of a year, in the currency of the price; empty if power or price is not known. */
  public OptionalDouble costPerYear() {
    return powerW.isPresent() ? running.costPerYear(powerW.getAsDouble()) : powerW;
  }

  /** What part of the power becomes flow and head, 0 to 1; empty if nothing runs or is known. */
  public OptionalDouble wireToWater() {
    return powerW.orElse(0) > 0 && waterPowerW > 0
        ? OptionalDouble.of(waterPowerW / powerW.getAsDouble())
        : OptionalDouble.empty();
  }
}
