package rillwright.cli.report.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9 m3/h; 9.05 m3/h | 9.00 m3/h; 9.05 m3/h",
        "9 m3/h; 9.05 m3/h; 10.2 m3/h | 9.0 m3/h; 9.0 m3/h; 10.2 m3/h",
        "9.05 m3/h 101 %; dry; 10.2 m3/h 114 % | 9.0 m3/h 101 %; dry; 10.2 m3/h 114 %",
        "12 in; 1,031.7 in | 12.0 in; 1,031.7 in",
        "+0.03 in (+4 %); -0.5 in | +0.03 in (+4 %); -0.50 in",
        "0.05 L/s; 100 L/s; 12.5 L/s | 0.05 L/s; 100 L/s; 12.5 L/s", // too small for fewer
        "12 m3/h; 12.24 m3/h | 12.00 m3/h; 12.24 m3/h", // as written in a data sheet
        "11 m3/h; 1.29 m3/h | 11.0 m3/h; 1.3 m3/h",
        "8 to 14 mm; 4.5 to 6 mm | 8 to 14 mm; 4.5 to 6 mm",
        "2.400 m; 0.000 m; 1.250 m | 2.400 m; 0.000 m; 1.250 m",
        "1,300 gph; 588 gph | 1,300 gph; 588 gph",
        "0.5 m; 12 mm | 0.5 m; 12 mm",
        "77 % of 4,950 gph; nothing | 77 % of 4,950 gph; nothing"
      })
  void columnHasOneNumberOfDecimals(String written, String shown) {
    assertEquals(cells(shown), Decimals.alike(cells(written)));
  }

  @ParameterizedTest
  @CsvSource({"13, 14.7, 13.0 to 14.7", "-1.7, 1.7, -1.7 to 1.7", "393, '1,170', '393 to 1,170'"})
  void figuresOfARangeHaveOneNumberOfDecimals(String low, String high, String shown) {
    assertEquals(shown, Decimals.range(low, high));
  }

  @ParameterizedTest
  @CsvSource({
    "7.92 m3/h, 14 m3/h, 7.9 m3/h", // three figures of 14.0
    "0.04 m3/h, 14 m3/h, 0.0 m3/h",
    "62 gph, '3,030 gph', 62 gph",
    "7.92 m3/h, 9.44 m3/h, 7.92 m3/h"
  })
  void smallFlowHasNoMoreDecimalsThanTheGreatest(String flow, String greatest, String shown) {
    assertEquals(shown, Decimals.beside(flow, greatest));
  }

  private static List<String> cells(String text) {
    return Arrays.asList(text.split("; ", -1));
  }
}
