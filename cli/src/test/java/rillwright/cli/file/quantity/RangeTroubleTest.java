package rillwright.cli.file.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeTroubleTest {
  private static final Map<String, Measure> MEASURES =
      Map.of(
          "length", Measure.LENGTH,
          "number", Measure.NUMBER,
          "share", Measure.SHARE,
          "temperature", Measure.TEMPERATURE);

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "length | 38 ft ± -4 ft | \"38 ft ± -4 ft\": what stands after \"±\" must be greater than 0; it is half the width of the interval, to both sides",
        "length | 38 ft ± 0 ft | \"38 ft ± 0 ft\": what stands after \"±\" must be greater than 0; it is half the width of the interval, to both sides",
        "length | 38 ft ± 1e30 ft | \"1e30 ft\" is too large to be real",
        "length | 38 ft +/- 4 ft | \"38 ft +/- 4 ft\": write ± or +-: \"38 ft ± 4 ft\"",
        "length | 38 ft +/-4 ft | \"38 ft +/-4 ft\": write ± or +-: \"38 ft ±4 ft\"",
        "length | 38 ft .. 38 ft | \"38 ft .. 38 ft\" is one value; write \"38 ft\"",
        "length | 1 ft .. 12 in | \"1 ft .. 12 in\" is one value; write \"1 ft\"",
        "length | 44 ft .. 38 ft | \"44 ft .. 38 ft\" is a range from high to low; write the smaller value first",
        "length | 38 ft .. 44 ft ± 2 ft | \"38 ft .. 44 ft ± 2 ft\": say a range or a tolerance, not both",
        "length | 38 ft ± 2 ft .. 4 ft | \"38 ft ± 2 ft .. 4 ft\": say a range or a tolerance, not both",
        "length | 38 ft ± 20 % | \"38 ft ± 20 %\": write \"± 7.6 ft\"",
        "length | -3 in +- 10% | \"-3 in +- 10%\": write \"± 0.3 in\"",
        "length | 7 ft 3 in ± 10 % | \"7 ft 3 in ± 10 %\": a tolerance is written in a unit, not as a share",
        "number | 0.04 ± 20 % | \"0.04 ± 20 %\": write \"± 0.008\"",
        "temperature | 62 F ± 10 % | \"62 F ± 10 %\": a tolerance is written in a unit, not as a share",
        "share | 50 % ± 0 % | \"50 % ± 0 %\": what stands after \"±\" must be greater than 0; it is half the width of the interval, to both sides"
      })
  void saysHowRangesAndTolerancesAreWritten(String measure, String text, String message) {
    NotAQuantity answer =
        assertThrows(
            NotAQuantity.class, () -> QuantityReader.read(text, MEASURES.get(measure), Range.ANY));
    assertEquals(message, answer.getMessage());
  }
}
