package rillwright.cli.catalogue;

import java.util.List;
import rillwright.solver.network.Skimmer;

/**
 * Discharge coefficient of a skimmer's mouth.
 *
 * @param name with a door or without
 * @param dischargeCoefficient Cd, dimensionless
 */
public record SkimmerMouth(String name, double dischargeCoefficient) {

  /** Where the number is from. */
  public String source() {
    return "common practice, no source";
  }

  static List<SkimmerMouth> all() {
    return List.of(
        new SkimmerMouth("door: yes", Skimmer.WITH_DOOR),
        new SkimmerMouth("door: no", Skimmer.WITHOUT_DOOR));
  }
}
