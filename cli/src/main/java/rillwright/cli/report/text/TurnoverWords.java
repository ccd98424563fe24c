package rillwright.cli.report.text;

import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.Turnover;

/** How often the water of a basin is pumped round, in words. */
public final class TurnoverWords {
  private TurnoverWords() {}

  /** In one sentence. */
  public static String of(Turnover turnover, ShownUnits units) {
    return "T" + clause(turnover, units).substring(1);
  }

  /** The same within a sentence. */
  public static String clause(Turnover turnover, ShownUnits units) {
    return "the "
        + units.volume(turnover.volumeM3())
        + " of \""
        + turnover.basin().value()
        + "\" turn over "
        + units.computed(turnover.perDay())
        + " times a day, once in "
        + units.duration(turnover.onceInS())
        + " of running.";
  }
}
