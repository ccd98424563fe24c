package rillwright.cli.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.interview.Conversation.Ending;

class ConversationTest {
  @Test
  void entersTakeWhatIsSuggestedToTheEnd() {
    Script script = Script.of();
    assertEquals(Ending.ANSWERED, script.hold());
    assertEquals("us", script.kept().to("units"));
    assertEquals("3 ft", script.kept().to("lift"));
    assertEquals(16, script.kept().given().size());
    assertTrue(script.said().contains("16 of 16. Which pump"), script.said());
  }

  @Test
  void backGoesToTheQuestionBeforeAndOffersItsAnswerAgain() {
    Script script = Script.of("us", "stream", "My job", "back", "back", "fall", "");
    assertEquals(Ending.ANSWERED, script.hold());
    assertEquals(
        List.of(
            "units [us]",
            "job [fall]",
            "title [My pond]",
            "pond length [12 ft]",
            "title [My job]",
            "job [stream]",
            "title [My job]"),
        script.suggested().subList(0, 7));
    assertEquals("fall", script.kept().to("job"));
    assertEquals("My job", script.kept().to("title"));
    assertFalse(script.kept().has("stream length"));
  }

  @Test
  void backAtTheFirstQuestionStaysThere() {
    Script script = Script.ending("back", "back", "metric");
    assertEquals(Ending.BROKEN_OFF, script.hold());
    assertTrue(script.said().contains("This is the first question."));
    assertEquals(Map.of("units", "metric"), script.kept().given());
  }

  @Test
  void isLeftAndTakenUpAgain() {
    Script first = Script.of("metric", "two falls", "", "4 m", "quit");
    assertEquals(Ending.LEFT, first.hold());
    Map<String, String> kept = first.kept().given();
    assertEquals(4, kept.size());
    Script second = Script.of();
    assertEquals(Ending.ANSWERED, second.hold(Path.of("p.yaml"), Answers.NONE, kept));
    assertEquals("4 m", second.kept().to("pond length"));
    assertEquals("2.7 m", second.kept().to("pond width"));
  }

  @Test
  void anOfferedAnswerThatIsWrongIsNotOfferedTwice() {
    Script script = Script.of();
    assertEquals(
        Ending.ANSWERED, script.hold(Path.of("p.yaml"), Answers.NONE, Map.of("lift", "high")));
    assertTrue(script.said().contains("! lift: "), script.said());
    assertEquals("3 ft", script.kept().to("lift"));
  }

  @Test
  void answersThatAreNotAskedForAreNotAsked() {
    Script script = Script.of();
    script.hold(Path.of("p.yaml"), Answers.NONE.with("units", "metric"), Map.of());
    assertEquals("job [fall]", script.suggested().get(0));
    assertEquals("900 mm", script.kept().to("lift"));
  }

  @Test
  void aQuestionMarkSaysMore() {
    assertTrue(Script.of("", "", "", "", "", "", "", "?").suggested().isEmpty());
    Script script = Script.of("", "", "", "", "", "", "", "?");
    script.hold();
    assertTrue(script.said().contains("normal water level, which is 0"), script.said());
  }

  static Stream<Arguments> wrongAnswers() {
    List<String> noPond = List.of("us", "fall", "t");
    List<String> toLift = List.of("us", "fall", "t", "12 ft", "9 ft", "3 ft", "16 in");
    List<String> toPipe = Stream.concat(toLift.stream(), Stream.of("", "", "", "", "")).toList();
    List<String> toPump = Stream.concat(toPipe.stream(), Stream.of("", "", "")).toList();
    return Stream.of(
        arguments(List.of(), "imperial", "! units: \"imperial\" is not known; choose us, metric"),
        arguments(List.of("us"), "falls", "did you mean \"fall\"?"),
        arguments(noPond, "38", "! pond length: \"38\" has no unit"),
        arguments(noPond, "-3 ft", "must be greater than 0"),
        arguments(toLift, "7 Foot", "did you mean \"ft\"?"),
        arguments(toLift, "3 gph", "gph"),
        arguments(toLift, "-3 ft", "! lift: \"-3 ft\" is not above the water"),
        arguments(toLift, "1/0 ft", "divides by 0"),
        arguments(toPipe, "flexibel PVC", "did you mean \"flexible PVC\"?"),
        arguments(
            Stream.concat(toPipe.stream(), Stream.of("flexible PVC")).toList(),
            "2-1/4 in",
            "the nearest are 2 in and 2-1/2 in"),
        arguments(toPump, "no-such.csv", "! pump: pump \"no-such\": no-such.csv: there is no"),
        arguments(toPump, "../secret.csv", "outside the project's folder"),
        arguments(toPump, "2400 gph", "\"2400 gph at 9 ft\""),
        arguments(toPump, "2400 ft at 9 ft", "! pump: \"2400 ft\""),
        arguments(toPump, "0 gph at 9 ft", "must be greater than 0"),
        arguments(List.of("us", "fall"), "a\u001b[2Jb", "characters that are no letters"),
        arguments(List.of("us", "fall"), "a\u202eb", "characters that are no letters"),
        arguments(List.of("us", "fall"), "x".repeat(5000), "at most 200 characters"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("wrongAnswers")
  void aWrongAnswerIsRefusedWithItsQuestionAndAskedAgain(
      List<String> before, String wrong, String message) {
    List<String> answers = Stream.concat(before.stream(), Stream.of(wrong)).toList();
    Script script = Script.ending(answers.toArray(String[]::new));
    assertEquals(Ending.BROKEN_OFF, script.hold());
    assertTrue(script.said().contains(message), script.said());
    List<String> asked = script.suggested();
    String key = asked.get(asked.size() - 1).replaceAll(" \\[.*", "");
    assertTrue(script.said().contains("! " + key + ": "), script.said());
    assertEquals(asked.get(asked.size() - 2), asked.get(asked.size() - 1));
    assertTrue(script.said().codePoints().allMatch(c -> c == '\n' || !Character.isISOControl(c)));
  }

  @Test
  void nothingButWrongAnswersComesToAnEnd() {
    Script script = Script.ending(Collections.nCopies(1000, "y").toArray(String[]::new));
    assertEquals(Ending.BROKEN_OFF, script.hold());
    assertTrue(script.suggested().size() < 100, script.suggested().size() + " questions");
  }

  @Test
  void theFirstDropLeavesSomeOfTheLift() {
    Script script =
        Script.of("us", "stream", "", "", "", "", "", "5 ft", "", "", "", "5 ft", "18 in");
    script.hold();
    assertTrue(
        script.said().contains("! first drop: \"5 ft\" is not below the lift of 5 ft"),
        script.said());
    assertEquals("18 in", script.kept().to("first drop"));
  }
}
