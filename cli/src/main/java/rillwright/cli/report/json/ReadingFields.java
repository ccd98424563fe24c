package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.reading.Measurand.Teller;
import rillwright.solver.study.diagnosis.reading.Measurands;

/**
 * The fields of a reading as a project file has them, its value null: where it is, what is read.
 */
final class ReadingFields implements Teller<Void> {
  private final Json json;

  ReadingFields(Json json) {
    this.json = json;
  }

  private Void fields(String where, String name, String read) {
    json.words(where, name);
    json.number(read, OptionalDouble.empty());
    return null;
  }

  @Override
  public Void flow(Measurands.Flow flow) {
    return fields("at", flow.point().value(), "flow");
  }

  @Override
  public Void crestHead(Measurands.CrestHead head) {
    return fields("at", head.fall().value(), "crest head");
  }

  @Override
  public Void brink(Measurands.Brink brink) {
    return fields("at", brink.fall().value(), "brink");
  }

  @Override
  public Void teePressure(Measurands.TeePressure pressure) {
    return fields("at", pressure.tee().value(), "pressure");
  }

  @Override
  public Void gaugePressure(Measurands.GaugePressure pressure) {
    return fields("gauge", pressure.gauge(), "pressure");
  }

  @Override
  public Void level(Measurands.Level level) {
    return fields("at", level.point().value(), "level");
  }

  @Override
  public Void power(Measurands.Power power) {
    return fields("pump", power.line().value(), "power");
  }
}
