package rillwright.cli.catalogue;

/**
 * A size of pipe or hose.
 *
 * @param material as project files name it: {@code flexible PVC}
 * @param size as the trade says it: {@code 1-1/2 in}, {@code 63 mm}
 * @param insideM inside diameter, m
 * @param roughnessM absolute roughness of the wall, m
 * @param source where the numbers are from
 */
public record PipeSize(
    String material, String size, double insideM, double roughnessM, String source) {}
