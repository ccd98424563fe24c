package rillwright.cli.interview;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rillwright.curves.wording.PlainText;

/** Asks the questions one after the other, forth and back, until all are answered. */
public final class Conversation {
  /** Wrong answers one after the other after which nobody can be listening. */
  private static final int MOST_WRONG = 50;

  private static final String BACK = "back";
  private static final String HELP = "?";

  /** The answer that leaves. */
  public static final String QUIT = "quit";

  /** How it came to its end. */
  public enum Ending {
    /** All questions are answered. */
    ANSWERED,
    /** Left by the one who answers. */
    LEFT,
    /** The input ended, or nothing but wrong answers came. */
    BROKEN_OFF
  }

  private final Interview interview;
  private final Dialogue dialogue;
  private final Consumer<Answers> keep;
  private final Map<String, String> offered;
  private final Deque<String> answered = new ArrayDeque<>();
  private Answers answers;
  private int wrong;

  /**
   * A conversation.
   *
   * @param given answers that are not asked for
   * @param offered earlier answers, suggested again
   * @param keep takes the answers after each of them
   */
  public Conversation(
      Interview interview,
      Dialogue dialogue,
      Answers given,
      Answers offered,
      Consumer<Answers> keep) {
    this.interview = interview;
    this.dialogue = dialogue;
    this.answers = given;
    this.offered = new HashMap<>(offered.given());
    this.keep = keep;
  }

  /** What was answered so far. */
  public Answers answers() {
    return answers;
  }

  /** Asks until the end. */
  public Ending hold() {
    dialogue.say(
        "Enter takes what stands in brackets. \"back\" goes to the question before, \"?\" says"
            + " more, \"quit\" leaves; what was answered is kept.");
    Optional<Question> next = interview.next(answers);
    while (next.isPresent()) {
      Optional<Ending> ending = ask(next.get());
      if (ending.isPresent()) {
        return ending.get();
      }
      next = interview.next(answers);
    }
    return Ending.ANSWERED;
  }

  private Optional<Ending> ask(Question question) {
    String suggestion =
        Optional.ofNullable(offered.get(question.key()))
            .orElseGet(() -> question.suggestion().apply(answers));
    dialogue.say(
        (answered.size() + 1)
            + " of "
            + (answered.size() + remaining())
            + ". "
            + question.words().apply(answers));
    Optional<String> line = dialogue.ask(question, suggestion);
    if (line.isEmpty()) {
      return Optional.of(Ending.BROKEN_OFF);
    }
    switch (line.get()) {
      case BACK -> back();
      case HELP -> dialogue.say(question.hint());
      case QUIT -> {
        return Optional.of(Ending.LEFT);
      }
      default -> take(question, line.get().isEmpty() ? suggestion : line.get());
    }
    return wrong >= MOST_WRONG ? Optional.of(Ending.BROKEN_OFF) : Optional.empty();
  }

  private long remaining() {
    return Questions.askedAfter(answers).stream()
        .filter(question -> !answers.has(question.key()))
        .count();
  }

  private void back() {
    if (answered.isEmpty()) {
      dialogue.say("This is the first question.");
      wrong++;
      return;
    }
    String key = answered.pop();
    offered.put(key, answers.to(key));
    answers = answers.without(key);
  }

  private void take(Question question, String answer) {
    Optional<String> fault = interview.faultOf(question, answer, answers);
    if (fault.isPresent()) {
      offered.remove(question.key());
      dialogue.say("! " + PlainText.harmless(question.key() + ": " + fault.get()));
      wrong++;
      return;
    }
    wrong = 0;
    answers = answers.with(question.key(), answer);
    answered.push(question.key());
    keep.accept(answers);
  }
}
