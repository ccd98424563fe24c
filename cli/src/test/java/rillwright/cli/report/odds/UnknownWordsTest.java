package rillwright.cli.report.odds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.study.odds.OddsAnswer.Unknown;

/** Names of uncertain quantities in pictures and in what asbuilt says. */
class UnknownWordsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "line \"side\": valve: open | valve in side, opening",
        "line \"high\": fitting 2: k | fitting 2 of high, K",
        "line \"high\": run | run in high, length",
        "line \"low\": pipe: roughness | pipe in low, roughness",
        "line \"a: b\": skimmer: clogged | skimmer in a: b, clogged",
        "point \"low fall\": crest | low fall, crest",
        "pump \"old pump\": unknown: bend | old pump, bend of its curve",
        "water: temperature | water: temperature"
      })
  void partLineAndQuantity(String what, String words) {
    assertEquals(words, UnknownWords.of(new Unknown("lines.x", what, "1 .. 2")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "line \"side\": pipe: size | pipe in side",
        "line \"high\": fitting 2: k | fitting 2 of high",
        "point \"low fall\": crest | low fall, crest"
      })
  void partAndLineAlone(String what, String words) {
    assertEquals(words, UnknownWords.partOf(what));
  }
}
