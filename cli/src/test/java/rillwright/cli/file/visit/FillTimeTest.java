package rillwright.cli.file.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures of the README: 5 % and 0.2 s, as the root of the sum of their squares. */
class FillTimeTest {
  @ParameterizedTest
  @CsvSource({"30, 0.050", "13, 0.052", "8, 0.056", "2, 0.112"})
  void theUsualShareGrowsAsTheTimeGetsShort(double seconds, double share) {
    assertEquals(share, FillTime.share(seconds, OptionalDouble.empty()), 0.0005);
  }

  @ParameterizedTest
  @CsvSource({"8.1, 0.074", "2, 0.122"})
  void theWatchCountsBesidesWhatIsWrittenToo(double seconds, double share) {
    assertEquals(share, FillTime.share(seconds, OptionalDouble.of(0.07)), 0.0005);
  }
}
