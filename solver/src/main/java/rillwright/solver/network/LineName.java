package rillwright.solver.network;

/** The name of a line, as written in the file. */
public record LineName(String value) implements Comparable<LineName> {
  @Override
  public int compareTo(LineName other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
