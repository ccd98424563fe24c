package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.reading.Readable.Teller;
import rillwright.solver.study.diagnosis.reading.Readables;

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
  public Void flow(Readables.Flow flow) {
    return fields("at", flow.point().value(), "flow");
  }

  @Override
  public Void crestHead(Readables.CrestHead head) {
    return fields("at", head.fall().value(), "crest head");
  }

  @Override
  public Void brink(Readables.Brink brink) {
    return fields("at", brink.fall().value(), "brink");
  }

  @Override
  public Void teePressure(Readables.TeePressure pressure) {
    return fields("at", pressure.tee().value(), "pressure");
  }

  @Override
  public Void gaugePressure(Readables.GaugePressure pressure) {
    return fields("gauge", pressure.gauge(), "pressure");
  }

  @Override
  public Void level(Readables.Level level) {
    return fields("at", level.point().value(), "level");
  }

  @Override
  public Void power(Readables.Power power) {
    return fields("pump", power.line().value(), "power");
  }
}
