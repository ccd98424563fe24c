package rillwright.cli.file.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantities that are not known exactly: tolerances and ranges. */
class InexactQuantityTest {
  private static final Map<String, Measure> MEASURES =
      Map.of(
          "length", Measure.LENGTH,
          "share", Measure.SHARE,
          "temperature", Measure.TEMPERATURE,
          "number", Measure.NUMBER);

  @ParameterizedTest
  @CsvSource({
    "60 ft ± 5 ft, length, 18.288, 1.524",
    "60 ft±5 in, length, 18.288, 0.127",
    "60 ft +- 5 ft, length, 18.288, 1.524",
    "-5 in +- 1 in, length, -0.127, 0.0254",
    "7 ft 3 in ± 1 ft 1 in, length, 2.2098, 0.3302",
    "60 % ± 5 %, share, 0.6, 0.05",
    "0.02 ± 0.005, number, 0.02, 0.005",
    "59 F ± 9 F, temperature, 15, 5"
  })
  void aToleranceIsNormalAboutItsMiddle(String text, String measure, double middle, double width)
      throws NotAQuantity {
    Quantity quantity = QuantityReader.read(text, MEASURES.get(measure), Range.ANY);
    assertEquals(middle, quantity.middle(), 1e-12);
    assertEquals(width, ((Quantity.Normal) quantity.spread()).halfWidth(), 1e-12);
    assertFalse(quantity.isExact());
  }

  @ParameterizedTest
  @CsvSource({
    "0.002 mm .. 0.02 mm, length, 0.000002, 0.00002",
    "1 ft..2 ft, length, 0.3048, 0.6096",
    "-6 in .. -5 in, length, -0.1524, -0.127",
    "40 % .. 60 %, share, 0.4, 0.6",
    "1 .. 2.5, number, 1, 2.5"
  })
  void aRangeIsEvenAndItsMiddleIsComputedWith(
      String text, String measure, double least, double greatest) throws NotAQuantity {
    Quantity quantity = QuantityReader.read(text, MEASURES.get(measure), Range.ANY);
    Quantity.Even even = (Quantity.Even) quantity.spread();
    assertEquals(least, even.least(), 1e-12);
    assertEquals(greatest, even.greatest(), 1e-12);
    assertEquals((least + greatest) / 2, quantity.middle(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "60 ft ± -5 ft",
        "60 ft ± 5",
        "60 ± 5 ft",
        "60 ft ± 0 ft",
        "60 ft ±",
        "± 5 ft",
        "60 ft ± 5 gph",
        "1 .. 2 ft",
        "2 ft .. 1 ft",
        "1 ft .. 1 ft",
        "1 ft ..",
        ".. 1 ft",
        "1 ft ... 2 ft",
        "-1 ft .. 2 ft",
        "60 ft ± 1e30 ft"
      })
  void refusesHalfARangeOrTolerance(String text) {
    assertThrows(
        NotAQuantity.class, () -> QuantityReader.read(text, Measure.LENGTH, Range.POSITIVE));
  }
}
