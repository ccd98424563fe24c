package rillwright.cli.catalogue;

import java.util.Optional;

/**
 * What a pipe is made of.
 *
 * @param name as project files name it
 * @param roughnessM absolute roughness that is computed with, m
 * @param leastRoughnessM least that it may be when new, m
 * @param greatestRoughnessM greatest that it may be when new, m
 * @param elasticModulusPa of a pressure pipe's wall, Pa; empty where it is not known
 * @param warm name of the series by which its pressure rating falls with the temperature
 * @param coiled whether it is usually sold in coils, not in straight lengths
 * @param source where the numbers are from
 */
public record Material(
    String name,
    double roughnessM,
    double leastRoughnessM,
    double greatestRoughnessM,
    Optional<Double> elasticModulusPa,
    String warm,
    boolean coiled,
    String source) {
  private static final double PASCALS_PER_GIGAPASCAL = 1e9;

  static Material of(TableRow row) {
    return new Material(
        row.text("material"),
        row.lengthM("roughness"),
        row.lengthM("least"),
        row.lengthM("greatest"),
        row.numberIfAny("modulus").map(modulus -> PASCALS_PER_GIGAPASCAL * modulus),
        row.text("warm"),
        row.text("sold").equals("coils"),
        row.source());
  }
}
