package rillwright.curves.sheet.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.sheet.fault.SheetFault;
import rillwright.curves.sheet.fault.SheetFaults;

class NumberReaderTest {
  private static List<SheetFault> noted(FaultList faults) {
    return assertThrows(SheetFaults.class, () -> faults.throwIfAny("p.csv")).faults();
  }

  private static NumberReader reader(Separator separator) {
    return new NumberReader(separator, new FaultList());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "38, 38",
    "-2.5, -2.5",
    "+7, 7",
    ".5, 0.5",
    "3., 3",
    "1.004e-6, 1.004e-6",
    "2E3, 2000"
  })
  void readsNumbersWithAPoint(String text, double value) {
    assertEquals(OptionalDouble.of(value), reader(Separator.COMMA).parse(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"29,5|29.5", "-0,25|-0.25", "1,004e-6|1.004e-6", ",5|0.5", "12|12"})
  void readsNumbersWithACommaBetweenSemicolons(String text, double value) {
    assertEquals(OptionalDouble.of(value), reader(Separator.SEMICOLON).parse(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "-",
        ".",
        "e5",
        "1e",
        "1e9999",
        "0x1F",
        "1d",
        "1f",
        "NaN",
        "Infinity",
        "1_000",
        "1 000",
        "1,000",
        "--1",
        "1..2",
        "\u0661"
      })
  void takesNothingElseForANumber(String text) {
    assertEquals(OptionalDouble.empty(), reader(Separator.COMMA).parse(text));
  }

  @ParameterizedTest
  @EnumSource
  void readsBackWhatIsWritten(Separator separator) {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 2000; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-8, 9));
      String text = Double.toString(value).replace('.', separator.decimalMark());
      assertEquals(OptionalDouble.of(value), reader(separator).parse(text), "seed 11: " + text);
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "COMMA|inf|is not a finite number; write the number of the data sheet",
        "COMMA|1e400|is not a finite number; write the number of the data sheet",
        "COMMA|12 # at shut-off|is not a number; a comment needs a line of its own",
        "COMMA|12 ft|is not a number; write the number alone, its unit stands in the heading",
        "COMMA|1 000|has a mark between thousands; write the digits without it",
        "COMMA|1'000|has a mark between thousands; write the digits without it",
        "COMMA|29,5|has a decimal comma; write a decimal point, or put semicolons between all"
            + " columns",
        "COMMA|about|is not a number; write one such as 29.5",
        "SEMICOLON|29.5|has a decimal point; between semicolons decimals have a comma, such as"
            + " 29,5, and thousands no mark",
        "SEMICOLON|about|is not a number; write one such as 29,5",
      })
  void saysWhatIsWrongAndWhatWouldBeRight(Separator separator, String text, String trouble) {
    FaultList faults = new FaultList();
    Cell cell = new Cell(3, 7, text);
    assertTrue(new NumberReader(separator, faults).read("head", cell).isEmpty());
    String expected = "head \"" + text + "\" " + trouble;
    assertEquals(expected, noted(faults).get(0).message());
    assertEquals(3, noted(faults).get(0).line());
    assertEquals(7, noted(faults).get(0).column());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "flow [gph],head [ft]|COMMA",
        "flow [gph];head [ft]|SEMICOLON",
        "flow [gph]|COMMA",
        "\"a;b\",head [ft]|COMMA",
        "flow [a;b],head [ft]|COMMA",
        "flow [L/h];\"head [m]\"|SEMICOLON",
      })
  void headingsTellWhatStandsBetweenCells(String headings, Separator expected) {
    assertEquals(expected, Separator.of(headings));
  }
}
