package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

class FormerOptionsTest {
  @Test
  void formerNamesBecomeTodaysAndAllElseStays() {
    String[] given = {
      "pumps", "--each", "a--each.yaml", "--upto=2", "--set", "points.a.x=--each b"
    };
    String[] renewed = {
      "pumps", "--independent", "a--each.yaml", "--max-pumps=2", "--set", "points.a.x=--each b"
    };
    assertArrayEquals(renewed, FormerOptions.renewed(given));
  }
}
