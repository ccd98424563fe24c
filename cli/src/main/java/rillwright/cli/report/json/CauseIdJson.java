package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.solver.study.diagnosis.cause.CauseId;

/** A cause and its place for programs. */
final class CauseIdJson {
  private CauseIdJson() {}

  static void write(Json json, CauseId id) {
    json.words("cause", id.cause());
    json.wordsOrNull("at", id.at());
    if (id.part().isPresent()) {
      json.whole("part", id.part().getAsInt());
    } else {
      json.number("part", OptionalDouble.empty());
    }
  }
}
