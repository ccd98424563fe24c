package rillwright.solver.study.diagnosis.inference;

import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.study.diagnosis.reading.Readable.Teller;
import rillwright.solver.study.diagnosis.reading.Readables;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * Whether somebody sees by a readable that a fall is weak: its flow or its crest head while it
 * runs. In a job without a fall the outlets count.
 */
record ShowsWeakness(Network network) implements Teller<Boolean> {

  @Override
  public Boolean flow(Readables.Flow flow) {
    boolean noFalls = network.points().stream().noneMatch(Fall.class::isInstance);
    return isRunning(flow.when()) && (noFalls || network.point(flow.point()) instanceof Fall);
  }

  private static boolean isRunning(When when) {
    return when.equals(new When.Running());
  }

  @Override
  public Boolean crestHead(Readables.CrestHead head) {
    return isRunning(head.when());
  }

  @Override
  public Boolean brink(Readables.Brink brink) {
    return false;
  }

  @Override
  public Boolean teePressure(Readables.TeePressure pressure) {
    return false;
  }

  @Override
  public Boolean gaugePressure(Readables.GaugePressure pressure) {
    return false;
  }

  @Override
  public Boolean level(Readables.Level level) {
    return false;
  }

  @Override
  public Boolean power(Readables.Power power) {
    return false;
  }
}
