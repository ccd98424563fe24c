package rillwright.solver.network;

import rillwright.solver.invariant.Require;

/** The name of a point, as written in the file. */
public record PointName(String value) implements Comparable<PointName> {
  public PointName {
    Require.given("name of a point", value);
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
