package rillwright.cli.command.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rillwright.cli.interview.Question;
import rillwright.cli.interview.Questions;

class PlainLinesTest {
  private static final Question ANY = Questions.all().get(0);

  private final StringWriter shown = new StringWriter();

  private PlainLines lines(String input) {
    return new PlainLines(new StringReader(input), new PrintWriter(shown));
  }

  @Test
  void readsLinesWithAnyEndsAndTheLastWithoutOne() {
    PlainLines lines = lines("a\r\n b \r\r\nc\n\nd");
    for (String expected : new String[] {"a", "b", "", "c", "", "d"}) {
      assertEquals(Optional.of(expected), lines.ask(ANY, "x"));
    }
    assertEquals(Optional.empty(), lines.ask(ANY, "x"));
    assertTrue(shown.toString().startsWith("[x] "));
  }

  @Test
  void ofAHugeLineNoMoreIsHeldThanIsNeededToRefuseIt() {
    PlainLines lines = lines("x".repeat(3_000_000) + "\nshort\n");
    assertEquals(1000, lines.ask(ANY, "x").orElseThrow().length());
    assertEquals(Optional.of("short"), lines.ask(ANY, "x"));
  }

  @Test
  void breaksParagraphsAtSixtyColumns() {
    lines("").say("word ".repeat(60));
    assertTrue(shown.toString().lines().allMatch(line -> line.length() <= 60));
  }
}
