package rillwright.solver.network;

/** The name of a point, as written in the file. */
public record PointName(String value) implements Comparable<PointName> {
  @Override
  public boolean equals(Object other) {
    return other instanceof PointName name && value.equals(name.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public int compareTo(PointName other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
