package rillwright.cli.interview;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;

/**
 * What is asked next, and whether an answer will do.
 *
 * @param file where the project is to be written
 */
public record Interview(Path file) {
  /** Where in the file a fault lies, which the question says already. */
  private static final Pattern ADDRESS =
      Pattern.compile("^(?:(?:point|line|stream) \"[^\"]*\": )?(?:[a-z][a-z ]*: )*(?=\")");

  private static final List<String> LIFTS = List.of("lift", "lower lift");

  /** The longest answer, in characters. */
  public static final int LONGEST_ANSWER = 200;

  /** The next question; empty when all are answered. */
  public Optional<Question> next(Answers answers) {
    return Questions.askedAfter(answers).stream()
        .filter(question -> !answers.has(question.key()))
        .findFirst();
  }

  /**
   * What is wrong with an answer: by the question's own choices, else by the readers of project
   * files, which are shown the project that it would make.
   *
   * @param before what was answered before, and is right
   * @return a sentence; empty if nothing is wrong
   */
  public Optional<String> faultOf(Question question, String answer, Answers before) {
    if (answer.length() > LONGEST_ANSWER) {
      return Optional.of("an answer has at most " + LONGEST_ANSWER + " characters");
    }
    if (!PlainText.harmless(answer).equals(answer)) {
      return Optional.of(
          PlainText.quoted(answer) + " has characters that are no letters; type the answer again");
    }
    if (!question.choices().isEmpty()) {
      return question.choices().contains(answer)
          ? Optional.empty()
          : Optional.of(
              PlainText.quoted(answer)
                  + " is not known"
                  + Choices.hint(answer, question.choices()));
    }
    Answers after = before.with(question.key(), answer);
    return lift(question, after)
        .or(() -> drop(question, after))
        .or(() -> ofPump(question, answer))
        .or(() -> ofReaders(question, after));
  }

  private Optional<String> ofReaders(Question question, Answers after) {
    try {
      Answers whole =
          question.key().equals(Questions.PUMP)
              ? after
              : after.with(Questions.PUMP, PumpAnswer.NONE_YET);
      Draft.of(whole, file).project();
      return Optional.empty();
    } catch (InvalidInput wrong) {
      return Optional.of(ADDRESS.matcher(wrong.faults().get(0).message()).replaceFirst(""));
    }
  }

  /** The parts of a duty are read by themselves, so that they are not taken for a file's name. */
  private static Optional<String> ofPump(Question question, String answer) {
    if (!question.key().equals(Questions.PUMP)) {
      return Optional.empty();
    }
    try {
      boolean numeral = !answer.isEmpty() && Character.isDigit(answer.charAt(0));
      return PlannedDuty.read(answer).isEmpty() && numeral && !answer.contains(".csv")
          ? Optional.of(
              PlainText.quoted(answer)
                  + " is neither a data sheet (.csv) nor a flow and head; write for example"
                  + " \"2400 gph at 9 ft\"")
          : Optional.empty();
    } catch (NotAQuantity wrong) {
      return answer.endsWith(".csv") ? Optional.empty() : Optional.of(wrong.getMessage());
    }
  }

  private static Optional<String> lift(Question question, Answers after) {
    return LIFTS.contains(question.key())
            && Written.lengthM(after.to(question.key())).orElse(1) <= 0
        ? Optional.of(
            PlainText.quoted(after.to(question.key()))
                + " is not above the water; the crest of a fall must be")
        : Optional.empty();
  }

  private static Optional<String> drop(Question question, Answers after) {
    OptionalDouble lift = Written.lengthM(after.to("lift"));
    OptionalDouble first = Written.lengthM(after.to("first drop"));
    return question.key().equals("first drop")
            && lift.isPresent()
            && first.isPresent()
            && first.getAsDouble() >= lift.getAsDouble()
        ? Optional.of(
            PlainText.quoted(after.to("first drop"))
                + " is not below the lift of "
                + after.to("lift")
                + "; some of it is left for the bed of the stream")
        : Optional.empty();
  }

  /** Keys that questions have. */
  static List<String> keys() {
    return Questions.all().stream().map(Question::key).toList();
  }
}
