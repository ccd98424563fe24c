package rillwright.cli.catalogue;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.PipeWall;

/**
 * A size of pipe or hose.
 *
 * @param wall what it is made of
 * @param size as the trade says it: {@code 1-1/2 in}, {@code 63 mm}
 * @param insideM inside diameter, m
 * @param pressure its wall as that of a pressure pipe; empty if it is none or not known
 * @param source where the numbers are from
 */
public record PipeSize(
    Material wall, String size, double insideM, Optional<PipeWall> pressure, String source) {

  /** Its material as project files name it: {@code flexible PVC}. */
  public String material() {
    return wall.name();
  }

  /** Absolute roughness of the wall, m. */
  public double roughnessM() {
    return wall.roughnessM();
  }

  /** What it is, for a person: {@code 2 in flexible PVC}. */
  public String label() {
    return size + " " + material();
  }

  /** Whether it is sold by millimetres, not inches. */
  public boolean isMetric() {
    return size.endsWith("mm");
  }

  /** Whether it is meant by a name of material and size: {@code flexible PVC 1.5 in}. */
  public boolean isCalled(String materialAndSize) {
    return Spelling.isNamed(materialAndSize, material(), size);
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
