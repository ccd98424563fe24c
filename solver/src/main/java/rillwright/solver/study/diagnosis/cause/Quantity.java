package rillwright.solver.study.diagnosis.cause;

/**
 * What a cause changes.
 *
 * @param words for a person: "K added"
 * @param unit SI unit of its size; "1" for a ratio
 */
public record Quantity(String words, String unit) {
  /** A ratio. */
  public static Quantity ratio(String words) {
    return new Quantity(words, "1");
  }
}
