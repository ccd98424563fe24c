package rillwright.solver.stream;

import java.util.function.Function;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Wording;

/**
 * Something to know about a stream or a level.
 *
 * @param code short and stable
 * @param at the stream or point that it is about
 * @param told what is so and what to do about it
 */
record StreamFinding(String code, String at, Function<Wording, String> told) implements Finding {

  @Override
  public String message(Wording wording) {
    return told.apply(wording);
  }
}
