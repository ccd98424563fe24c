package rillwright.solver.study.diagnosis.inference;

import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.study.diagnosis.reading.Drawdown;
import rillwright.solver.study.diagnosis.reading.LevelBelow;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand.Teller;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * Whether somebody sees by a readable that a fall is weak: its flow or its crest head while it
 * runs. In a job without a fall the outlets count.
 */
record ShowsWeakness(Network network) implements Teller<Boolean> {

  @Override
  public Boolean flow(Measurands.Flow flow) {
    boolean noFalls = network.points(Fall.class).isEmpty();
    return isRunning(flow.when()) && (noFalls || network.point(flow.point()) instanceof Fall);
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
  public Boolean levelBelow(LevelBelow level) {
    return false;
  }
}
