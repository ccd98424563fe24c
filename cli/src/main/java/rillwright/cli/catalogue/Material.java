package rillwright.cli.catalogue;

/**
 * What a pipe is made of.
 *
 * @param name as project files name it
 * @param roughnessM absolute roughness that is computed with, m
 * @param leastRoughnessM least that it may be when new, m
 * @param greatestRoughnessM greatest that it may be when new, m
 * @param source where the numbers are from
 */
public record Material(
    String name,
    double roughnessM,
    double leastRoughnessM,
    double greatestRoughnessM,
    String source) {

  static Material of(TableRow row) {
    return new Material(
        row.text("material"),
        row.lengthM("roughness"),
        row.lengthM("least"),
        row.lengthM("greatest"),
        row.source());
  }
}
