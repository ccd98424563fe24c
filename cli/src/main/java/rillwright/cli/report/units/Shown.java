package rillwright.cli.report.units;

import rillwright.cli.file.Show;
import rillwright.cli.study.Answer;

/** The units that a file asks for. */
public final class Shown {
  private Shown() {}

  /** The units of an answer. */
  public static ShownUnits of(Answer answer) {
    return of(answer.job().show());
  }

  /** The units of a kind. */
  public static ShownUnits of(Show show) {
    return show == Show.METRIC ? ShownUnits.METRIC : ShownUnits.US;
  }
}
