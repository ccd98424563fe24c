package rillwright.cli.report.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class NearLimitTest {
  private static final ShownUnits US = ShownUnits.US;

  @Test
  void aShareOnTheOtherSideOfALimitDoesNotReadAsTheLimit() {
    assertEquals("94.9 %", NearLimit.below(0.94999, 0.95, US));
    assertEquals("125.1 %", NearLimit.above(1.25001, 1.25, US));
  }

  @Test
  void allOtherSharesAreWholePercents() {
    assertEquals("94 %", NearLimit.below(0.9449, 0.95, US));
    assertEquals("95 %", NearLimit.below(0.95, 0.95, US));
    assertEquals("126 %", NearLimit.above(1.2551, 1.25, US));
  }
}
