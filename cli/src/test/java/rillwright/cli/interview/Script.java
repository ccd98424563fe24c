package rillwright.cli.interview;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import rillwright.cli.interview.Conversation.Ending;

/**
 * One who answers by a list, then by Enter as long as it is asked for, and remembers what was said.
 */
final class Script implements Dialogue {
  private final Queue<String> answers;
  private final boolean thenEnter;
  private final List<String> said = new ArrayList<>();
  private final List<String> suggested = new ArrayList<>();
  private final List<Answers> kept = new ArrayList<>();

  private Script(boolean thenEnter, List<String> answers) {
    this.answers = new ArrayDeque<>(answers);
    this.thenEnter = thenEnter;
  }

  /** Answers, then Enter to the end. */
  static Script of(String... answers) {
    return new Script(true, List.of(answers));
  }

  /** Answers, then the end of the input. */
  static Script ending(String... answers) {
    return new Script(false, List.of(answers));
  }

  /** How a conversation that begins with some answers ends. */
  Ending hold(Path file, Answers given, Map<String, String> offered) {
    return new Conversation(new Interview(file), this, given, new Answers(offered), kept::add)
        .hold();
  }

  /** The same from the beginning. */
  Ending hold() {
    return hold(Path.of("pond.yaml"), Answers.NONE, Map.of());
  }

  @Override
  public void say(String paragraph) {
    said.add(paragraph);
  }

  @Override
  public Optional<String> ask(Question question, String suggestion) {
    suggested.add(question.key() + " [" + suggestion + "]");
    String next = answers.poll();
    return next != null ? Optional.of(next) : thenEnter ? Optional.of("") : Optional.empty();
  }

  /** The answers that were kept last. */
  Answers kept() {
    return kept.isEmpty() ? Answers.NONE : kept.get(kept.size() - 1);
  }

  /** All that was said, a paragraph a line. */
  String said() {
    return String.join("\n", said);
  }

  /** All questions that were asked, with what they suggested. */
  List<String> suggested() {
    return suggested;
  }
}
