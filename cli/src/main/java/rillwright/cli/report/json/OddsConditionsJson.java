package rillwright.cli.report.json;

import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.odds.OddsAnswer;

/** Odds in several conditions, for programs. */
public final class OddsConditionsJson {
  private OddsConditionsJson() {}

  /** The JSON text. */
  public static String of(Cases<OddsAnswer> answer) {
    return CasesJson.of(answer, "odds", OddsJson::write);
  }
}
