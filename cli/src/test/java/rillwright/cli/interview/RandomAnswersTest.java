package rillwright.cli.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.command.Run;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/** Answers drawn by a seed: the file says what was answered, and solve or duty takes it. */
class RandomAnswersTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();
  private static final String SHEET = "flow [gph],head [ft],power [W]\n0,30,400\n6000,2,600\n";

  @TempDir private Path folder;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theFileSaysWhatWasAnswered(long seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    Files.writeString(folder.resolve("a pump.csv"), SHEET);
    Path file = folder.resolve("p.yaml");
    Interview interview = new Interview(file);
    Answers answers = Answers.NONE;
    for (Optional<Question> next = interview.next(answers);
        next.isPresent();
        next = interview.next(answers)) {
      Question question = next.get();
      String answer = answer(question, answers, random);
      String drawn = "seed " + seed + ", " + question.key() + ": " + answer;
      assertEquals(Optional.empty(), interview.faultOf(question, answer, answers), drawn);
      answers = answers.with(question.key(), answer);
    }
    Draft draft = Draft.of(answers, file);
    Files.writeString(file, draft.text());
    assertAnswers(answers, draft.project().tree(), seed);
    boolean chosen = !answers.to("pump").equals("none yet");
    Run run = Run.of(chosen ? "solve" : "duty", file.toString());
    assertEquals(0, run.status(), "seed " + seed + "\n" + run.err() + draft.text());
  }

  private static void assertAnswers(Answers answers, MapNode tree, long seed) {
    for (Question question : Questions.askedAfter(answers)) {
      String answer = answers.to(question.key());
      boolean leftOut = answer.equals("none") || answer.equals("0");
      if (question.goesTo().size() > 1 || question.key().equals("title")) {
        Optional<String> there = at(tree, question.goesTo());
        String drawn = "seed " + seed + ", " + question.key();
        assertEquals(leftOut ? Optional.empty() : Optional.of(answer), there, drawn);
      }
    }
  }

  /** What stands at a path; of a list the first item that has the next name is meant. */
  private static Optional<String> at(Node node, List<String> path) {
    if (path.isEmpty()) {
      return node instanceof Scalar scalar ? Optional.of(scalar.text()) : Optional.empty();
    }
    if (node instanceof ListNode list) {
      return list.items().stream()
          .filter(item -> item instanceof MapNode map && map.find(path.get(0)).isPresent())
          .findFirst()
          .flatMap(item -> at(item, path));
    }
    return node instanceof MapNode map
        ? map.find(path.get(0))
            .map(Entry::value)
            .flatMap(below -> at(below, path.subList(1, path.size())))
        : Optional.empty();
  }

  private static String answer(Question question, Answers before, SplittableRandom random) {
    return switch (question.key()) {
      case "title" -> one(random, "Fall: \"north\" #2", "- [x] {a}, 'b'", "Yes", "2024", "Ä \\ %s");
      case "pond length", "pond width" -> length(random, 1.2, 12);
      case "pond depth" -> length(random, 0.4, 2);
      case "skimmer" -> random.nextInt(3) == 0 ? "none" : length(random, 0.15, 0.9);
      case "lift", "lower lift" -> length(random, 0.2, 4);
      case "first drop" -> shareOf(before.to("lift"), random.nextDouble(0.05, 0.9));
      case "fall width", "lower width", "stream width" -> length(random, 0.2, 1.5);
      case "lip" -> one(random, CATALOGUE.lips());
      case "target", "lower target" -> target(random);
      case "stream length", "pipe run", "upper run", "lower run" -> length(random, 4.5, 40);
      case "bed" -> one(random, CATALOGUE.beds());
      case "pipe" -> one(random, CATALOGUE.materials());
      case "pipe size", "lower size" ->
          random.nextBoolean()
              ? question.suggestion().apply(before)
              : one(random, CATALOGUE.sizesOf(before.to("pipe")));
      case "elbows" -> "" + random.nextInt(9);
      case "pump" -> pump(question.suggestion().apply(before), random);
      default -> one(random, question.choices());
    };
  }

  private static String length(SplittableRandom random, double leastM, double greatestM) {
    double lengthM = random.nextDouble(leastM, greatestM);
    int inches = (int) Math.ceil(lengthM / 0.0254);
    return switch (random.nextInt(5)) {
      case 0 -> inches + " in";
      case 1 -> inches / 12 + " ft " + inches % 12 + " in";
      case 2 -> inches + "-1/2 in";
      case 3 -> (int) (1000 * lengthM) + " mm";
      default -> Math.round(100 * lengthM) / 100.0 + " m";
    };
  }

  private static String shareOf(String lift, double share) {
    return Math.max(1, (int) (1000 * share * Written.lengthM(lift).getAsDouble())) + " mm";
  }

  private static String target(SplittableRandom random) {
    int some = 1 + random.nextInt(9);
    return one(random, 10 * some + " gph/in", 300 * some + " gph", some + " m3/h", some + " L/min");
  }

  private static String pump(String suggestion, SplittableRandom random) {
    return one(
        random,
        suggestion,
        suggestion,
        "a pump.csv",
        "none yet",
        "900 gph at 4 psi",
        "1 L/s at 9 ft");
  }

  private static String one(SplittableRandom random, String... some) {
    return one(random, List.of(some));
  }

  private static String one(SplittableRandom random, List<String> some) {
    assertTrue(!some.isEmpty());
    return some.get(random.nextInt(some.size()));
  }
}
