package rillwright.cli.report;

import rillwright.cli.json.Shape;

/** What every answer is good for that somebody could build or buy by. */
public final class Estimate {
  /** In one line. */
  public static final String LINE =
      "Hydraulic estimate only; not an engineering, electrical or structural design.";

  private Estimate() {}

  /** An answer in JSON: it says by its first members what it is and what it is good for. */
  public static <A> Shape<A> answer(String kind, String meaning) {
    return Shape.<A>answer(kind, meaning)
        .words("estimate", "What the answer is good for.", any -> LINE);
  }
}
