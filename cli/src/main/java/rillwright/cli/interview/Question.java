package rillwright.cli.interview;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A question.
 *
 * @param key what its answer is called in a file of answers
 * @param words the question, which may depend on what was answered before
 * @param hint what may be answered
 * @param goesTo where the answer stands in the project, names of fields one below the other; empty
 *     where it decides what stands there
 * @param choices all answers that there are; empty where the readers of the project decide
 * @param asked whether it is asked, after what was answered before
 * @param suggestion what Enter takes, after what was answered before
 */
public record Question(
    String key,
    Function<Answers, String> words,
    String hint,
    List<String> goesTo,
    List<String> choices,
    Predicate<Answers> asked,
    Function<Answers, String> suggestion) {
  public Question {
    goesTo = List.copyOf(goesTo);
    choices = List.copyOf(choices);
  }

  /** A question that is always asked and whose answer is a value of the project. */
  static Question value(String key, String words, String hint, String... goesTo) {
    return new Question(
        key, any -> words, hint, List.of(goesTo), List.of(), any -> true, any -> "");
  }

  /** A question that is always asked and answered by one of some words. */
  static Question choice(String key, String words, String hint, List<String> choices) {
    return new Question(
        key, any -> words, hint, List.of(), choices, any -> true, any -> choices.get(0));
  }

  /** The same in words of its own for the jobs that something is true of. */
  Question orIf(Predicate<Answers> job, String other) {
    return new Question(
        key,
        answers -> job.test(answers) ? other : words.apply(answers),
        hint,
        goesTo,
        choices,
        asked,
        suggestion);
  }

  /** The same, asked only if something is true of what was answered before. */
  Question when(Predicate<Answers> condition) {
    return new Question(key, words, hint, goesTo, choices, condition, suggestion);
  }

  /** The same with a suggestion in each unit system. */
  Question suggests(String us, String metric) {
    return suggests(answers -> answers.isMetric() ? metric : us);
  }

  /** The same with a suggestion. */
  Question suggests(Function<Answers, String> suggested) {
    return new Question(key, words, hint, goesTo, choices, asked, suggested);
  }
}
