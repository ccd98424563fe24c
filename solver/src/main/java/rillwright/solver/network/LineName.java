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

  @Override
  public String toString() {
    return value;
  }
}
