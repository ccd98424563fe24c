package rillwright.cli.report.odds;

import rillwright.cli.report.units.ShownUnits;

/**
 * Chances in words: never certain where a sample says otherwise.
 *
 * @param units in which shares are shown
 */
public record ChanceWords(ShownUnits units) {
  private static final double ONE_PER_CENT = 0.01;

  /** "83 %", "under 1 %", "over 99 %". */
  public String of(double chance) {
    if (chance > 0 && chance < ONE_PER_CENT) {
      return "under 1 %";
    }
    if (chance < 1 && chance > 1 - ONE_PER_CENT) {
      return "over 99 %";
    }
    return units.share(chance);
  }

  /** "gets its target in 83 % of samples." */
  String sentence(double chance) {
    if (chance == 1) {
      return "gets its target in every sample.";
    }
    if (chance == 0) {
      return "gets its target in no sample.";
    }
    return "gets its target in " + ofHundred(chance) + " % of samples.";
  }

  /** "83", "under 1", "over 99": how many of a hundred. */
  String ofHundred(double chance) {
    return of(chance).replace(" %", "");
  }
}
