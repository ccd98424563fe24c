package rillwright.cli.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpellingTest {
  private static final String[] NAMES = {
    "PVC-U PN 10", "pvc-u pn 10", " PVC-U  PN\t10 ", "PVC-U PN 1", "PVC-U PN 100", "", " ", "é", "É"
  };

  /** The quick comparison says what the slow one says. */
  @ParameterizedTest
  @ValueSource(strings = {"PVC-U PN 10", "PVC-U PN", "", "é", "elbow 90"})
  void aSpellingIsWhatBecomesTheSamePlainName(String wanted) {
    String plain = Spelling.plain(wanted);
    for (String name : NAMES) {
      assertEquals(
          Spelling.plain(name).equals(plain),
          Spelling.isSpelling(name, plain),
          "\"" + name + "\" for \"" + wanted + "\"");
    }
  }
}
