package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.reading.Measurand.Teller;
import rillwright.solver.study.diagnosis.reading.Measurands;

/**
 * The fields of a reading as a project file has them: where it is, what is read. The value is null
 * where it is still to be read.
 */
final class ReadingFields implements Teller<Void> {
  private final Json json;
  private final OptionalDouble value;

  ReadingFields(Json json, OptionalDouble value) {
    this.json = json;
    this.value = value;
  }

  private Void fields(String where, String name, String read) {
    json.words(where, name);
    json.number(read, value);
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
