package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import rillwright.cli.report.weak.RiskWords;
import tools.jackson.databind.JsonNode;

/** What {@code solve} prints of the suction side; its figures are those of its JSON. */
class SuctionTextTest {
  private static final String VAULT = "../examples/dry-vault/vault.yaml";

  @Test
  void aPumpAboveTheWaterShowsItsNpsh() {
    JsonNode part = pump(VAULT, "supply");
    String row =
        String.format(
            Locale.ROOT,
            "SUCTION NPSH available required supply %.2f m %.2f m",
            part.get("npshAvailableM").asDouble(),
            part.get("npshRequiredM").asDouble());
    Run.assertReported(Run.of("solve", VAULT).flat(), row);
  }

  /** The sheet asks for 7.9 in; the chamber stands 14.4 in over the inlet (-15 in and -0.6 in). */
  @Test
  void aPumpInTheWaterShowsTheDepthOverItsInlet() {
    String shown = Run.of("solve", "../examples/weak-fall/fall.yaml").flat();
    Run.assertReported(shown, "SUCTION water over inlet needed supply 14.4 in 7.9 in");
    Run.assertReported(shown, "never reach in while it runs. " + RiskWords.FROM_THE_EDGE);
    assertFalse(shown.contains("NPSH"), "its sheet asks for none and it stands in the water");
  }

  @Test
  void whereNoInletHasALevelItIsSaidThatNothingIsChecked() {
    Run.assertReported(
        Run.of("solve", "../examples/fish-pond/pond.yaml").flat(),
        "SUCTION \"supply\": its pump is not the first part after \"settling chamber\", so it is"
            + " taken to stand outside; give the level of its own inlet (\"elevation\" of the pump),"
            + " or neither the water over it nor its suction head (NPSH) is checked. LEVELS");
    Run.assertReported(
        Run.of("solve", "../examples/fish-pond/pond.yaml").flat(),
        "374 mm above the mouth of the suction pipe");
  }

  /** Water that stands at the pond's level, open to it, says nothing of a check valve. */
  @Test
  void aPressureThatFallsIsNotedWhereSomeIsHeld() {
    String leaks = "keeps falling says that a check valve leaks";
    Run.assertReported(Run.of("solve", "../examples/long-stream/stream.yaml").flat(), leaks);
    assertFalse(Run.of("solve", "../examples/fish-pond/pond.yaml").flat().contains(leaks));
  }

  /** With less head at the inlet than the sheet asks for its figures hold for no pump. */
  @Test
  void aPumpInWhichWaterBoilsHasNoReadingsToExpect() {
    String shown = Run.of("solve", VAULT, "--set", "lines.supply.pump.elevation=6 m").flat();
    int warned = shown.indexOf("These flows are not reached: water boils");
    assertTrue(warned > 0 && warned < shown.indexOf("FALLS"), shown);
    Run.assertReported(shown, "READINGS ON THE DAY None: water boils");
    assertFalse(shown.contains("barrel"), shown);
    assertFalse(shown.contains("a year"), shown);
    assertFalse(Run.of("solve", VAULT).out().contains("boils"), "it has what its sheet asks for");
  }

  @Test
  void aPumpAboveTheWaterIsToBeFilled() {
    String words = "The suction of the pump in \"supply\" climbs 0.9 m above the water: fill pump";
    Run.assertReported(Run.of("check", VAULT).flat(), words);
    Run.assertReported(Run.of("solve", VAULT).flat(), words);
  }

  private static JsonNode pump(String file, String line) {
    for (JsonNode part : Run.json("solve", file).get("lines").get(line).get("parts")) {
      if (part.get("part").asString().equals("pump")) {
        return part;
      }
    }
    throw new AssertionError("no pump in " + line);
  }
}
