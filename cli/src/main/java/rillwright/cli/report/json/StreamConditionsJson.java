package rillwright.cli.report.json;

import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.stream.StreamAnswer;

/** Streams and levels in several conditions, for programs. */
public final class StreamConditionsJson {
  private StreamConditionsJson() {}

  /** The JSON text. */
  public static String of(Cases<StreamAnswer> answer) {
    return CasesJson.of(answer, "stream", StreamJson::writeInCondition);
  }
}
