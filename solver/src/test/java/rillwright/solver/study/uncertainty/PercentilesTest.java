package rillwright.solver.study.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class PercentilesTest {
  /** With n values the share p lies at rank p (n − 1), counted from 0. */
  @Test
  void lieStraightBetweenTheSortedValues() {
    Percentiles percentiles = new Percentiles(new double[] {40.0, 10.0, 20.0, 30.0});
    assertEquals(10, percentiles.at(0));
    assertEquals(17.5, percentiles.at(0.25), 1e-12);
    assertEquals(25, percentiles.at(0.5), 1e-12);
    assertEquals(38.5, percentiles.at(0.95), 1e-12);
    assertEquals(40, percentiles.at(1));
  }

  @Test
  void ofOneValueAreThatValue() {
    assertEquals(7, new Percentiles(new double[] {7.0}).at(0.3));
  }

  @Test
  void ofNothingThereAreNone() {
    assertThrows(IllegalArgumentException.class, () -> new Percentiles(new double[] {}));
  }
}
