package rillwright.solver.study.diagnosis.cause;

/**
 * What a cause changes.
 *
 * @param words for a person: "share of its head left"
 * @param unit SI unit of its size; "1" for a ratio
 * @param least size that makes sense
 * @param greatest size that makes sense
 */
public record Quantity(String words, String unit, double least, double greatest) {
  private static final double MOST = 1e6;

  /** A ratio of whatever size. */
  public static Quantity ratio(String words) {
    return new Quantity(words, "1", 0.001, MOST);
  }

  /** A ratio that is less than 1. */
  public static Quantity share(String words) {
    return new Quantity(words, "1", 0, 0.999);
  }

  /** A ratio of what is left to what there was. */
  public static Quantity left(String words) {
    return new Quantity(words, "1", 0.02, 1);
  }

  /** A length, m. */
  public static Quantity length(String words, double greatest) {
    return new Quantity(words, "m", 1e-4, greatest);
  }

  /** Nothing that has a size. */
  public static Quantity ofNoSize(String words) {
    return new Quantity(words, "1", 0, 1);
  }
}
