package rillwright.cli.study.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Step;

/** Of two changes that do the same, one more only if it does not more of it besides. */
class LikeChangesTest {
  /** Of pairs with one more step: a pond 90 % larger is no part of one 40 % larger. */
  @ParameterizedTest
  @CsvSource({
    "LARGER_POND, 1.9, 1.4, false",
    "LARGER_POND, 1.4, 1.9, true",
    "FULLER, 0.02, 0.01, false",
    "FULLER, 0.01, 0.02, true",
    "WIDER_MOUTH, 0.4, 0.3, false",
    "WIDER_MOUTH, 0.3, 0.4, true",
    "LOWER_SILL, -0.2, -0.1, false",
    "LOWER_SILL, -0.1, -0.2, true",
    "TURN_VALVE, 20, 10, true",
    "TURN_VALVE, 10, 20, true",
  })
  void onlyWhatTakesNoMoreWorkIsAPart(Action action, double alone, double together, boolean part) {
    Step more = step(Action.HIGHER_OVERFLOW, 0.02);
    Candidate other = new Candidate(List.of(more, step(action, together)));

    assertEquals(part, Candidate.of(step(action, alone)).isPartOf(other));
  }

  private static Step step(Action action, double figure) {
    return new Step(action, "pond", "", figure, "", List.of(), OptionalDouble.empty());
  }
}
