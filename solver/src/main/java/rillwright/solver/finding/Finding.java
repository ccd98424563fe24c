package rillwright.solver.finding;

/** One thing that the crew should know. */
public interface Finding {

  /** A short stable code for programs, words joined by hyphens: "starved-chamber". */
  String code();

  /** The name of the point or line that it is about. */
  String at();

  /** What is so and what to do about it, in one or two sentences. */
  String message(Wording wording);
}
