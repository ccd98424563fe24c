package rillwright.cli.file.quantity;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EverydayWritingTest {
  private static final Map<String, Measure> MEASURES =
      Map.of(
          "length", Measure.LENGTH,
          "share", Measure.SHARE,
          "days", Measure.DAYS_PER_YEAR,
          "number", Measure.NUMBER,
          "count", Measure.COUNT);

  // 1 yd is 3 ft and 1 ft is 12 in exactly; a month is a twelfth of 365 days.
  @ParameterizedTest(name = "{1} is written {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "length | 5'-6\" | 5 ft 6 in",
        "length | 5'6 | 5 ft 6 in",
        "length | 5 ft 6 | 5 ft 6 in",
        "length | 5 ft - 6 in | 5 ft 6 in",
        "length | 5 ft 6-1/2\u2033 | 5 ft 6-1/2 in",
        "length | 5 feet 6 | 5 ft 6 in",
        "length | 7' 3'' | 7 ft 3 in",
        "length | 5½ ft | 5-1/2 ft",
        "length | 5 ¾ in | 5-3/4 in",
        "length | ½ in | 1/2 in",
        "length | 5'6½\" | 5 ft 6-1/2 in",
        "length | 10 yd | 30 ft",
        "length | 2.5 yards | 7.5 ft",
        "length | 3-4 in | 3 in .. 4 in",
        "length | 38 ft - 44 ft | 38 ft .. 44 ft",
        "length | 38 ft – 44 ft | 38 ft .. 44 ft",
        "length | 38 ft to 44 ft | 38 ft .. 44 ft",
        "length | 1 ft - 18 in | 1 ft .. 18 in",
        "length | 6 in to 1 ft 2 in | 6 in .. 1 ft 2 in",
        "length | -6 in to -5 in | -6 in .. -5 in",
        "number | 0.03 to 0.06 | 0.03 .. 0.06",
        "share | 0 % - 40 % | 0 % .. 40 %",
        "share | half | 50 %",
        "share | 45 degrees | 50 %",
        "share | 45° | 50 %",
        "days | 7 months | 212.9 days/year",
        "days | 30 weeks | 210 days/year",
        "days | 210 days | 210 days/year",
        "count | two | 2"
      })
  void saysHowTheSameQuantityIsWrittenHere(String measure, String text, String right)
      throws NotAQuantity {
    NotAQuantity answer =
        assertThrows(
            NotAQuantity.class, () -> QuantityReader.read(text, MEASURES.get(measure), Range.ANY));
    String beginning = "\"" + text + "\" is written \"" + right + "\" here";
    assertTrue(answer.getMessage().startsWith(beginning), answer.getMessage());
    QuantityReader.read(right, MEASURES.get(measure), Range.ANY);
  }
}
