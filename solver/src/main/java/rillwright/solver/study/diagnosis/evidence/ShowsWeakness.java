package rillwright.solver.study.diagnosis.evidence;

import rillwright.solver.study.diagnosis.reading.Drawdown;
import rillwright.solver.study.diagnosis.reading.LevelBelow;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand.Teller;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * Whether somebody sees by a readable that something is weak while it runs: the flow or the crest
 * head of a fall, the flow out of an outlet.
 */
public record ShowsWeakness() implements Teller<Boolean> {

  @Override
  public Boolean flow(Measurands.Flow flow) {
    return isRunning(flow.when());
  }

  private static boolean isRunning(When when) {
    return when.equals(new When.Running());
  }

  @Override
  public Boolean crestHead(Measurands.CrestHead head) {
    return isRunning(head.when());
  }

  @Override
  public Boolean brink(Measurands.Brink brink) {
    return false;
  }

  @Override
  public Boolean teePressure(Measurands.TeePressure pressure) {
    return false;
  }

  @Override
  public Boolean gaugePressure(Measurands.GaugePressure pressure) {
    return false;
  }

  @Override
  public Boolean level(Measurands.Level level) {
    return false;
  }

  @Override
  public Boolean power(Measurands.Power power) {
    return false;
  }

  @Override
  public Boolean lineFlow(LineFlow flow) {
    return false;
  }

  @Override
  public Boolean drawdown(Drawdown drawdown) {
    return false;
  }

  @Override
  public Boolean sight(Sight sight) {
    return false;
  }

  @Override
  public Boolean meter(Meter meter) {
    return false;
  }

  @Override
  public Boolean levelBelow(LevelBelow level) {
    return false;
  }
}
