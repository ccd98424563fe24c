package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.inference.Diagnosis;
import rillwright.solver.study.diagnosis.inference.Explanation;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.inference.Scope;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Reading;

/** Why a fall is weak, for programs. */
public final class WeakJson {
  private static final ReadingWords WORDS = new ReadingWords(ShownUnits.METRIC);

  private final Json json;

  private WeakJson(Json json) {
    this.json = json;
  }

  /** The JSON text. */
  public static String of(WeakAnswer answer) {
    return Json.object(
        json -> {
          json.words("title", answer.title());
          ChangedField.write(json, answer.changes());
          new WeakJson(json).write(answer);
        });
  }

  private void write(WeakAnswer answer) {
    json.array(
        "readings",
        () ->
            answer
                .diagnosis()
                .readings()
                .forEach(reading -> json.object(() -> taken(reading, answer.scope()))));
    write(answer.diagnosis());
  }

  /** As the file has it, in SI units, with what would be read as built. */
  private void taken(Reading reading, Scope scope) {
    reading.what().tell(new ReadingFields(json, OptionalDouble.of(reading.value())));
    json.number("within", reading.tolerance().halfWidthAt(reading.value()));
    state(reading.what());
    json.number("asBuilt", scope.asBuilt(reading.what()));
  }

  private void write(Diagnosis diagnosis) {
    json.array("causes", () -> diagnosis.causes().forEach(this::cause));
    json.array(
        "firstGroup",
        () -> diagnosis.firstGroup().forEach(member -> json.object(() -> id(member.cause().id()))));
    json.objectOrNull("toldApartBy", diagnosis.toldApartBy(), next -> reading(next.what()));
    json.array("next", () -> diagnosis.next().forEach(this::next));
  }

  private void id(CauseId id) {
    CauseIdJson.write(json, id);
  }

  private void cause(Explanation explanation) {
    json.object(
        () -> {
          id(explanation.cause().id());
          json.number("probability", explanation.probability());
          json.number("size", explanation.size());
          json.wordsOrNull(
              "sizeUnit",
              explanation.cause().sizes().map(sizes -> explanation.cause().quantity().unit()));
          json.array("predicted", () -> explanation.predicted().forEach(this::predicted));
        });
  }

  private void predicted(OptionalDouble value) {
    json.number(value);
  }

  private void reading(Measurand readable) {
    readable.tell(new ReadingFields(json, OptionalDouble.empty()));
    json.words("within", WORDS.within(readable, readable.usualTolerance()));
    state(readable);
  }

  private void state(Measurand readable) {
    if (!readable.when().name().equals("running")) {
      json.words("when", readable.when().name());
    }
    readable.when().shutIn().ifPresent(line -> json.words("valve", line.value()));
  }

  private void next(NextReading next) {
    json.object(
        () -> {
          json.object("reading", () -> reading(next.what()));
          json.number("bits", next.bits());
          json.array(
              "predicted",
              () ->
                  next.predicted()
                      .forEach(
                          expected ->
                              json.object(
                                  () -> {
                                    id(expected.cause().id());
                                    json.number("value", expected.value());
                                  })));
        });
  }
}
