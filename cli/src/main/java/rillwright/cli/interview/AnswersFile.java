package rillwright.cli.interview;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;

/** Answers in a file: YAML or JSON, the questions' keys with an answer each. */
public final class AnswersFile {
  private static final int NOTES_AT = 32;

  private final List<Fault> faults = new ArrayList<>();

  private AnswersFile() {}

  /**
   * The answers in a file, each checked as if it was given in a conversation.
   *
   * @param given answers that the file need not give
   * @throws InvalidInput with everything that is wrong
   */
  public static Answers checked(Path file, Answers given, Interview interview) {
    MapNode tree = TreeReader.read(SourceText.read(file));
    AnswersFile reading = new AnswersFile();
    Answers written = reading.answers(tree);
    Answers right = given;
    for (Optional<Question> next = interview.next(right);
        next.isPresent();
        next = interview.next(right)) {
      Question question = next.get();
      String key = question.key();
      String answer = question.suggestion().apply(right);
      if (written.has(key)) {
        Optional<String> fault = interview.faultOf(question, written.to(key), right);
        fault.ifPresent(message -> reading.add(placeOf(tree, key), key + ": " + message));
        answer = fault.isPresent() ? answer : written.to(key);
      }
      right = right.with(key, answer);
    }
    for (String key : written.given().keySet()) {
      if (!right.has(key)) {
        reading.add(placeOf(tree, key), key + ": this is not asked for such a job; leave it out");
      }
    }
    if (!reading.faults.isEmpty()) {
      throw new InvalidInput(reading.faults);
    }
    return right;
  }

  /**
   * The answers in a file as they stand, to be offered again.
   *
   * @throws InvalidInput if it is no file of answers
   */
  public static Answers offered(Path file) {
    AnswersFile reading = new AnswersFile();
    Answers answers = reading.answers(TreeReader.read(SourceText.read(file)));
    if (!reading.faults.isEmpty()) {
      throw new InvalidInput(reading.faults);
    }
    return answers;
  }

  /** The text of a file of answers. */
  public static String text(Answers answers) {
    StringBuilder text = new StringBuilder();
    answers
        .given()
        .forEach(
            (key, answer) ->
                text.append(key).append(": ").append(Written.yaml(answer)).append('\n'));
    return text.toString();
  }

  /** All lines that a file of answers may have, with what is suggested and for which jobs. */
  public static String form() {
    StringBuilder form = new StringBuilder();
    for (Question question : Questions.all()) {
      String example = question.suggestion().apply(Answers.NONE);
      String line = question.key() + ": " + Written.yaml(example);
      form.append(line)
          .append(
              note(question).isEmpty()
                  ? ""
                  : " ".repeat(Math.max(2, NOTES_AT - line.length())) + "# ")
          .append(note(question))
          .append('\n');
    }
    return form.toString();
  }

  private static String note(Question question) {
    if (!question.choices().isEmpty()) {
      return String.join(", ", question.choices());
    }
    List<String> jobs = Questions.named(Questions.JOB).choices();
    List<String> asked =
        jobs.stream()
            .filter(job -> question.asked().test(Answers.NONE.with(Questions.JOB, job)))
            .toList();
    return asked.size() == 1
        ? "job: " + asked.get(0)
        : question.key().equals(Questions.PUMP)
            ? "or a data sheet's file, or none yet"
            : question.key().equals(Questions.SKIMMER) ? "or none" : "";
  }

  private Answers answers(MapNode tree) {
    Answers answers = Answers.NONE;
    for (Entry entry : tree.entries()) {
      if (Questions.find(entry.key()).isEmpty()) {
        add(
            entry.keyPlace(),
            "there is no question "
                + PlainText.quoted(entry.key())
                + Choices.hint(entry.key(), Interview.keys()));
      } else if (entry.value() instanceof Scalar scalar && !scalar.text().isBlank()) {
        answers = answers.with(entry.key(), scalar.text().strip());
      } else {
        add(
            entry.value().place(),
            entry.key() + ": expected an answer, found " + entry.value().words());
      }
    }
    return answers;
  }

  private static Place placeOf(MapNode tree, String key) {
    return tree.find(key).orElseThrow().value().place();
  }

  private void add(Place place, String message) {
    faults.add(Fault.at(place, message));
  }
}
