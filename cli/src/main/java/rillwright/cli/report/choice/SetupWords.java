package rillwright.cli.report.choice;

import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.trial.PumpSetup;

/** A pump as it would be set up, in words. */
public final class SetupWords {
  private SetupWords() {}

  /** {@code 2 × demo 40 in series at 80 %}. */
  public static String of(PumpSetup setup, ShownUnits units) {
    String model = setup.offer().model();
    String several =
        setup.count() == 1 ? model : setup.count() + " \u00d7 " + model + " in " + arranged(setup);
    return setup.speed() == 1 ? several : several + " at " + units.share(setup.speed());
  }

  /** How several stand: {@code parallel} or {@code series}. */
  public static String arranged(PumpSetup setup) {
    return setup.arrangement() == Arrangement.SERIES ? "series" : "parallel";
  }
}
