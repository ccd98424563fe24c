package rillwright.curves.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

  /** To compare a name of 49 kB with others takes minutes, and nobody mistypes one. */
  @Test
  void aNameThatNobodyTypesIsNotLookedFor() {
    String name = "x".repeat(201);
    assertEquals(List.of(), Nearest.to(name, List.of(name + "y")));
    assertEquals(List.of(name), Nearest.to(name.substring(1), List.of(name)));
  }

  @ParameterizedTest
  @CsvSource({
    "flwo, flow, a swap is two letters",
    "FLOW, flow, case does not count",
    "varable sped, variable speed, a longer name may be off by more",
    "spillway bxo, spillway box, of twelve letters four may be wrong"
  })
  void fewChangedLettersLeadToAName(String written, String meant, String why) {
    assertEquals(List.of(meant), Nearest.to(written, List.of("head", meant)), why);
  }

  @ParameterizedTest
  @CsvSource({"x, m, every letter is another", "flung, head, too many are", "xyz flow, pump, too"})
  void otherNamesAreNotMeant(String written, String known, String why) {
    assertEquals(List.of(), Nearest.to(written, List.of(known)), why);
  }

  @Test
  void theNearestThreeAreNamedNearestFirst() {
    assertEquals(
        List.of("fall 2", "ball 2", "fall 12"),
        Nearest.to("fall 2", List.of("tall 22", "fall 12", "ball 2", "fall 2", "fall 2")));
  }
}
