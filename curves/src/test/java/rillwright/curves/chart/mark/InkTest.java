package rillwright.curves.chart.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Contrast on paper, by relative luminance: W3C, Web Content Accessibility Guidelines 2.1 (2018),
 * success criteria 1.4.3 (text, 4.5 to 1) and 1.4.11 (shapes, 3 to 1); formula from memory.
 */
class InkTest {
  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static double luminance(Color color) {
    return 0.2126 * linear(color.getRed())
        + 0.7152 * linear(color.getGreen())
        + 0.0722 * linear(color.getBlue());
  }

  private static double contrastOnPaper(Color color) {
    return (luminance(Ink.PAPER) + 0.05) / (luminance(color) + 0.05);
  }

  @Test
  void blackOnWhiteIsTwentyOneToOne() {
    assertEquals(21, contrastOnPaper(Color.BLACK), 1e-12);
  }

  @Test
  void wordsAreReadOnPaper() {
    for (Color color : List.of(Ink.TEXT, Ink.SOFT_TEXT, Ink.AXIS)) {
      assertTrue(contrastOnPaper(color) >= 4.5, color + ": " + contrastOnPaper(color));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void curvesAreSeenAndTheirWordsAreRead(int number) {
    for (Pen pen : List.of(Pen.pump(number, 8), Pen.system(number, 8), Pen.panel(number))) {
      assertTrue(contrastOnPaper(pen.color()) >= 3, pen + ": " + contrastOnPaper(pen.color()));
      double words = contrastOnPaper(pen.textColor());
      assertTrue(words >= 4.5, pen + " words: " + words);
    }
    double power = contrastOnPaper(Pen.power().textColor());
    assertTrue(power >= 4.5, "power words: " + power);
  }

  /** A page copied in grey keeps the dashes: eight systems and eight panels differ without hue. */
  @Test
  void withoutColourTheDashesStillDiffer() {
    Set<List<Float>> systems = new HashSet<>();
    Set<List<Float>> panels = new HashSet<>();
    for (int number = 0; number < 8; number++) {
      systems.add(Pen.system(number, 8).dash());
      panels.add(Pen.panel(number).dash());
    }
    assertEquals(8, systems.size());
    assertEquals(8, panels.size());
    assertTrue(systems.stream().allMatch(dash -> dash.size() % 2 == 0), systems::toString);
  }

  /** Twelve pumps differ in grey: by shape, and by being filled or open. */
  @Test
  void withoutColourTheMarksStillDiffer() {
    Set<String> marks = new HashSet<>();
    for (int number = 0; number < 12; number++) {
      CurveMark mark = CurveMark.pump(number, 12);
      marks.add(mark.shape() + (mark.fill().equals(Ink.PAPER) ? " open" : " filled"));
    }
    assertEquals(12, marks.size());
  }

  @Test
  void beyondItsDataSheetACurveIsThinnerAndDashedInItsOwnColour() {
    Pen pump = Pen.pump(0, 1);
    assertEquals(pump.color(), pump.beyond().color());
    assertTrue(pump.beyond().width() < pump.width());
    assertTrue(pump.dash().isEmpty() && !pump.beyond().dash().isEmpty());
  }
}
