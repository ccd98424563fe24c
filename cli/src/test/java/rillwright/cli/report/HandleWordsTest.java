package rillwright.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Handles are counted from open, wherever one is named. */
class HandleWordsTest {
  @ParameterizedTest
  @CsvSource({"25.4, 25° from open", "0.4, wide open", "90, 90° from open"})
  void degreesSayFromWhere(double degrees, String words) {
    assertEquals(words, HandleWords.at(degrees));
  }

  @ParameterizedTest
  @CsvSource({"7, °+ from open", "1e9, °+ from open or more", "0, wide open"})
  void aLossSaysItToo(double lossCoefficient, String words) {
    String turned = HandleWords.turned(lossCoefficient);
    assertTrue(turned.matches("[0-9]*" + words), turned);
  }
}
