package rillwright.curves.chart.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextBlockTest {
  private static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 20);

  @Test
  void breaksBetweenWordsAndKeepsAllOfThemWhereThereIsRoom() {
    String text = "the skimmer passes no more than this";
    TextBlock block = TextBlock.wrapped(text, FONT, 160, 10);
    assertTrue(block.lines().size() > 1);
    assertEquals(text, String.join(" ", block.lines()));
    assertTrue(block.width() <= 160);
  }

  @Test
  void cutsWhatDoesNotFitAndShowsThatItDid() {
    TextBlock block = TextBlock.wrapped("word ".repeat(100), FONT, 300, 2);
    assertEquals(2, block.lines().size());
    assertTrue(block.lines().get(1).endsWith("\u2026"), block.lines().toString());
    assertTrue(block.width() <= 300);
    TextBlock one = TextBlock.wrapped("w".repeat(5000), FONT, 300, 2);
    assertTrue(one.width() <= 300, one.lines().toString());
  }

  @Test
  void leavesNothingOfNothing() {
    assertEquals(List.of(), TextBlock.wrapped("  \t ", FONT, 300, 2).lines());
    assertEquals(List.of("a"), TextBlock.ofLines(List.of("", "a", " "), FONT, 300).lines());
  }

  @Test
  void makesTextHarmless() {
    assertEquals(List.of("a\\u0000b c"), TextBlock.ofLine("a\u0000b\nc", FONT).lines());
  }
}
