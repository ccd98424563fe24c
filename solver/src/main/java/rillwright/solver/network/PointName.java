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

  /**
   * Written out, as is {@link #hashCode}: what a record gives by itself is linked at each start.
   */
  @Override
  public boolean equals(Object other) {
    return other instanceof PointName name && value.equals(name.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public String toString() {
    return value;
  }
}
