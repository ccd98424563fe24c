package rillwright.cli.report.weak;

import rillwright.solver.study.diagnosis.reading.Drawdown;
import rillwright.solver.study.diagnosis.reading.LevelBelow;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand.Teller;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Sight;

/** With what something is read. */
public final class Instrument implements Teller<String> {
  @Override
  public String flow(Measurands.Flow flow) {
    return "the bucket";
  }

  @Override
  public String crestHead(Measurands.CrestHead head) {
    return "the ruler";
  }

  @Override
  public String brink(Measurands.Brink brink) {
    return "the ruler";
  }

  @Override
  public String teePressure(Measurands.TeePressure pressure) {
    return "the gauge";
  }

  @Override
  public String gaugePressure(Measurands.GaugePressure pressure) {
    return "the gauge";
  }

  @Override
  public String level(Measurands.Level level) {
    return "the ruler";
  }

  @Override
  public String power(Measurands.Power power) {
    return "the meter";
  }

  @Override
  public String lineFlow(LineFlow flow) {
    return "the meter";
  }

  @Override
  public String drawdown(Drawdown drawdown) {
    return "the ruler";
  }

  @Override
  public String sight(Sight sight) {
    return "the eye";
  }

  @Override
  public String meter(Meter meter) {
    return "the meter";
  }

  @Override
  public String levelBelow(LevelBelow level) {
    return "the ruler";
  }
}
