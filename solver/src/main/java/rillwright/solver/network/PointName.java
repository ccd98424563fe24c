package rillwright.solver.network;

/** The name of a point, as written in the file. */
public record PointName(String value) implements Comparable<PointName> {
  @Override
  public int compareTo(PointName other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
