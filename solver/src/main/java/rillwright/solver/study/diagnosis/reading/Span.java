package rillwright.solver.study.diagnosis.reading;

/**
 * Values from one to another.
 *
 * @param least the lower end
 * @param greatest the upper end, at least the lower
 */
public record Span(double least, double greatest) {
  /** From the lesser of two to the greater. */
  public static Span between(double one, double other) {
    return new Span(Math.min(one, other), Math.max(one, other));
  }

  /** Its width. */
  public double width() {
    return greatest - least;
  }
}
