package rillwright.cli.report.json;

import java.util.Optional;
import rillwright.cli.report.conditions.Cases;
import rillwright.cli.report.stream.StreamAnswer;
import rillwright.solver.stream.StreamBudget;

/** Streams and levels in several conditions, for programs. */
public final class StreamConditionsJson {
  private StreamConditionsJson() {}

  /** The JSON text. */
  public static String of(Cases<StreamBudget> answer) {
    return CasesJson.of(answer, "stream", (json, one) -> write(json, answer, one));
  }

  private static void write(Json json, Cases<StreamBudget> answer, StreamBudget budget) {
    StreamJson.write(
        json,
        new StreamAnswer(
            answer.title(),
            answer.units(),
            answer.changes(),
            budget,
            Optional.empty(),
            Optional.empty()));
  }
}
