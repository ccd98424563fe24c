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

  @Test
  void lineOfThePumpIsStillTakenWhereItWasAskedFor() {
    String[] pump = {"duty", "pond.yaml", "--pump=low"};
    assertArrayEquals(
        pump, FormerOptions.renewed(new String[] {"duty", "pond.yaml", "--line=low"}));
    String[] pipe = {"pipes", "pond.yaml", "--line", "low"};
    assertArrayEquals(pipe, FormerOptions.renewed(pipe.clone()));
  }
}
