package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a file says that cannot be is found by {@code check}, without solving. */
class WhatCannotBeTest {
  private static final Path JOB = Path.of("../examples/weak-fall/fall.yaml");
  private static final String SHEET = "pumps/P-400.csv";

  /** Goes where the pump goes. */
  private static final String PUMP_READING = "  - {pump: supply, power: 365 W, within: 5 %}\n";

  @TempDir private Path folder;

  private String check(String... oldAndNew) throws IOException {
    String text = Files.readString(JOB);
    for (int i = 0; i < oldAndNew.length; i += 2) {
      assertTrue(text.contains(oldAndNew[i]), oldAndNew[i]);
      text = text.replace(oldAndNew[i], oldAndNew[i + 1]);
    }
    Files.createDirectories(folder.resolve("pumps"));
    if (!Files.exists(folder.resolve(SHEET))) {
      Files.copy(JOB.resolveSibling(SHEET), folder.resolve(SHEET));
    }
    Path file = Files.writeString(folder.resolve("job.yaml"), text);
    Run run = Run.of("check", file.toString());
    assertEquals(0, run.status(), run.err());
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void nothingIsFoundOfTheFileAsItIs() throws IOException {
    assertFalse(check("title:", "title:").contains(" ! "));
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "run: 84 ft | run: 4 ft | ends and high points are 6 ft apart in height, and no pipe can be"
            + " shorter than that",
        "crest: 6 ft | crest: 40 ft | above what its water reaches at the pumps' shut-off head",
        "crest: 6 ft | crest: -1 ft | The crest of \"fall\" lies 12 in below the water that it",
        "crest: 6 ft | crest: 290 m | above the water of \"pond\": check the unit of its level",
        "sill: -3-1/2 in | sill: 2 in | \"pond\" stands 2 in below the sill of the skimmer",
        "- pump: P-400 | - loss: {k: 1} | and no pump is on the way: nothing flows there",
        "target: 120 gph/in | target: 2880 m3/h | check its unit",
        "water: {temperature: 62 F} | evaporation: {air: 95 F, humidity: 30 %, wind: 3 mph}"
            + " | The file does not say how warm the water is",
        "- run: 84 ft | - high point: 40 ft | no pipe can be shorter than that"
      })
  void isFoundByCheck(String right, String wrong, String shown) throws IOException {
    String changed = wrong.startsWith("- high") ? "- run: 20 ft\n      " + wrong : wrong;
    String page = check(right, changed, PUMP_READING, "");
    assertTrue(page.contains(shown), page);
  }

  @Test
  void aLineDrawnFromTheFallToTheChamberIsToBeSwapped() throws IOException {
    String page = check("from: chamber\n    to: fall", "from: fall\n    to: chamber");
    assertTrue(page.contains("Swap \"from\" and \"to\" of that line"), page);
  }

  /** The sheet as it is, but litres an hour under a heading in cubic metres an hour. */
  @Test
  void aSheetInAnotherUnitIsFound() throws IOException {
    Files.createDirectories(folder.resolve("pumps"));
    Files.writeString(
        folder.resolve(SHEET), "Q [m3/h],H [m],P [W]\n0,7.2,310\n7800,5,385\n15000,1,410\n");
    String page = check("title:", "title:");
    assertTrue(page.contains("It would be usual with flows 1000 times smaller"), page);
  }
}
