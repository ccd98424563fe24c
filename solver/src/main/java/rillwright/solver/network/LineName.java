package rillwright.solver.network;

import rillwright.solver.invariant.Require;

/** The name of a line, as written in the file. */
public record LineName(String value) implements Comparable<LineName> {
  public LineName {
    Require.given("name of a line", value);
  }

  @Override
  public int compareTo(LineName other) {
    return value.compareTo(other.value);
  }

  /**
   * Written out, as is {@link #hashCode}: what a record gives by itself is linked at each start.
   */
  @Override
  public boolean equals(Object other) {
    return other instanceof LineName name && value.equals(name.value);
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
