package rillwright.curves.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTextTest {

  @ParameterizedTest
  @CsvSource({
    "1b, escape: colours and cursor",
    "07, bell",
    "0a, new line",
    "0d, carriage return",
    "7f, delete",
    "9b, control sequence introducer",
    "202e, right-to-left override",
    "2066, left-to-right isolate",
    "200b, zero-width space",
    "2028, line separator",
    "feff, byte-order mark",
    "d800, lone surrogate"
  })
  void charactersThatMoveOrHideTextAreWrittenOut(String hex, String what) {
    String character = String.valueOf((char) Integer.parseInt(hex, 16));
    String shown = "a\\u" + "0".repeat(4 - hex.length()) + hex + "b";
    assertEquals(shown, PlainText.harmless("a" + character + "b"), what);
  }

  @Test
  void ordinaryTextStaysAsItIs() {
    String text = "Fjörd 3½ m³/h — ± 60 % \uD83D\uDC1F 池";
    assertEquals(text, PlainText.harmless(text));
  }

  @Test
  void aLongQuoteIsCutWithoutSplittingACharacter() {
    String fish = "\uD83D\uDC1F";
    assertEquals("\"" + fish.repeat(60) + "…\"", PlainText.quoted(fish.repeat(61)));
    assertEquals("\"" + fish.repeat(60) + "\"", PlainText.quoted(fish.repeat(60)));
  }

  @ParameterizedTest
  @CsvSource({
    "'  a \u00a0 b  ', a b",
    "'a\nb\r\nc\td', a b c d",
    "'x\u202ey\u2028z', x\\u202ey z",
    "<b>&amp;, <b>&amp;"
  })
  void aLineHasSingleBlanksAndIsHarmless(String text, String line) {
    assertEquals(line, PlainText.line(text));
  }

  @Test
  void aLineIsCutWhereNobodyReadsOn() {
    assertEquals(1000, PlainText.line("w".repeat(5000)).length());
  }
}
