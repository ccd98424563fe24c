package rillwright.cli.catalogue;

import java.util.List;

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
    String material, String size, double insideM, double roughnessM, String source) {

  /** What it is, for a person: {@code 2 in flexible PVC}. */
  public String label() {
    return size + " " + material;
  }

  /** Whether it is meant by a name of material and size: {@code flexible PVC 1.5 in}. */
  public boolean isCalled(String materialAndSize) {
    return Spelling.isNamed(materialAndSize, material, size);
  }

  /** Whether a name of a type and a size means that type in this size: {@code elbow 90 2 in}. */
  public boolean isSizeOf(String typeAndSize, String type) {
    return Spelling.isNamed(typeAndSize, type, size);
  }

  /** Whether a name is one of a list, then any length, also one that no pipe has. */
  public static boolean isSomeSizeOf(String nameAndSize, List<String> names) {
    return names.stream().anyMatch(name -> Spelling.isNamedWithLength(nameAndSize, name));
  }
}
