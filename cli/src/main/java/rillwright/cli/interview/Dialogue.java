package rillwright.cli.interview;

import java.util.Optional;

/** Whoever answers: at a terminal, by lines of a file, in a test. */
public interface Dialogue {
  /** Shows a paragraph. */
  void say(String paragraph);

  /**
   * Asks for an answer.
   *
   * @param question that was shown
   * @param suggestion what an empty answer takes
   * @return what was answered, without blanks around it; empty at the end of the input
   */
  Optional<String> ask(Question question, String suggestion);
}
