package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What running takes, against sums done by hand. */
class RunningJsonTest {
  /**
   * A pump whose curve meets 4 m at 2 L/s, drawing 200 W there, lifts water 4 m to an outlet
   * through next to nothing. All numbers are made up.
   */
  private static final String PROJECT =
      """
      rillwright: 1
      water: {density: 1000 kg/m3, viscosity: 1e-6 m2/s}
      running: {price: 0.25 EUR/kWh, hours: 12 h/day, days: 200 days/year}
      points:
        pond: {kind: basin, level: 0 m, shape: [{level: -1 m, area: 10 m2}, {level: 0.5 m, area: 10 m2}]}
        spout: {kind: outlet, elevation: 4 m, target: 2 L/s}
      lines:
        up: {from: pond, to: spout, parts: [pump: lifter, loss: {flow: 2 L/s, head: 0.001 mm, exponent: 2}]}
      pumps:
        lifter:
          points:
            - {flow: 0 L/s, head: 8 m, power: POWER0}
            - {flow: 2 L/s, head: 4 m, power: POWER1}
            - {flow: 4 L/s, head: 0 m, power: POWER2}
      """;

  @TempDir private Path folder;

  private JsonNode json(String command, String text) throws IOException {
    return Run.json(command, Files.writeString(folder.resolve("p.yaml"), text).toString());
  }

  private static String withPower() {
    return PROJECT.replace("POWER0", "100 W").replace("POWER1", "200 W").replace("POWER2", "300 W");
  }

  @Test
  void solveTellsWattsMoneyEfficiencyAndTurnovers() throws IOException {
    JsonNode running = json("solve", withPower()).get("running");

    assertEquals(200, running.get("powerW").doubleValue(), 1e-3);
    // 1000 kg/m3 · 9.80665 m/s2 · 0.002 m3/s · 4 m
    assertEquals(78.4532, running.get("waterPowerW").doubleValue(), 1e-3);
    assertEquals(0.392266, running.get("wireToWater").doubleValue(), 1e-5);
    assertEquals(0.2 * 12 * 200, running.get("energyKwhPerYear").doubleValue(), 1e-2);
    assertEquals(0.2 * 12 * 200 * 0.25, running.get("costPerYear").doubleValue(), 1e-2);
    assertEquals("EUR", running.get("currency").stringValue());
    // 7.2 m3/h for 12 hours out of 10 m3
    assertEquals(8.64, running.get("turnoversPerDay").get("pond").doubleValue(), 1e-4);
  }

  @Test
  void withoutPowerOnTheSheetNothingIsClaimed() throws IOException {
    String text = PROJECT.replaceAll(", power: POWER\\d", "");
    JsonNode running = json("solve", text).get("running");
    for (String field : new String[] {"powerW", "wireToWater", "energyKwhPerYear", "costPerYear"}) {
      assertTrue(running.get(field).isNull(), field);
    }
  }

  @Test
  void dutyTellsWhatItWillTake() throws IOException {
    JsonNode running = json("duty", withPower()).get("running");
    double water = 78.4532;
    assertEquals(water, running.get("waterPowerW").doubleValue(), 1e-3);
    assertEquals(water / 0.45, running.get("leastPowerW").doubleValue(), 1e-2);
    assertEquals(water / 0.25, running.get("greatestPowerW").doubleValue(), 1e-2);
    assertEquals(
        water / 0.25 / 1000 * 12 * 200,
        running.get("greatestEnergyKwhPerYear").doubleValue(),
        1e-2);
    assertEquals(
        water / 0.45 / 1000 * 12 * 200 * 0.25, running.get("leastCostPerYear").doubleValue(), 1e-2);
  }

  @Test
  void dutyTellsTurnoversOfTheOnlyBasinThatFeedsThePump() throws IOException {
    JsonNode turnovers = json("duty", withPower()).get("running").get("turnoversPerDay");
    // 7.2 m3/h for 12 hours out of 10 m3
    assertEquals(8.64, turnovers.get("pond").doubleValue(), 1e-4);

    String byChamber =
        withPower()
            .replace("up: {from: pond", "up: {from: chamber")
            .replace("  spout:", "  chamber: {kind: chamber, floor: -1 m}\n  spout:")
            .replace(
                "lines:\n",
                "lines:\n"
                    + "  way: {from: pond, to: chamber, parts: [loss: {flow: 2 L/s, head: 1 mm,"
                    + " exponent: 2}]}\n");
    JsonNode same = json("duty", byChamber).get("running").get("turnoversPerDay");
    assertEquals(8.64, same.get("pond").doubleValue(), 1e-4);

    String byTwo =
        byChamber
            .replace("  spout:", "  tank: {kind: basin, level: 0 m}\n  spout:")
            .replace(
                "lines:\n",
                "lines:\n"
                    + "  side: {from: tank, to: chamber, parts: [loss: {flow: 2 L/s, head: 1 mm,"
                    + " exponent: 2}]}\n");
    assertTrue(json("duty", byTwo).get("running").get("turnoversPerDay").isEmpty());
  }

  private String text(String command, String text) throws IOException {
    Path file = Files.writeString(folder.resolve("p.yaml"), text);
    Run run = Run.of(command, file.toString());
    assertEquals(0, run.status(), run.err());
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void dutyTellsTurnoversInWords() throws IOException {
    String page = text("duty", withPower() + "show: metric\n");
    String sentence =
        "10,000 L of \"pond\" turn over 8.64 times a day, once in 83 minutes of running.";
    assertTrue(page.contains("At that flow the " + sentence), page);
    assertTrue(text("solve", withPower() + "show: metric\n").contains("The " + sentence));
  }

  @Test
  void whatIsTakenOfHoursAndDaysIsReportedExactly() throws IOException {
    String written = withPower();
    String taken = "default; set it under \"running\"";
    assertFalse(text("solve", written).contains(taken));
    String noDays = text("solve", written.replace(", days: 200 days/year", ""));
    assertTrue(noDays.contains("on 365 days a year (the days " + taken + ")"), noDays);
    String noHours = text("solve", written.replace(", hours: 12 h/day", ""));
    assertTrue(noHours.contains("on 200 days a year (the hours " + taken + ")"), noHours);
    String neither = text("solve", written.replaceAll("running: .*", ""));
    assertTrue(neither.contains("on 365 days a year (" + taken + ")"), neither);
    String never = text("solve", written.replace("12 h/day, days: 200 days/year", "0 h/day"));
    assertTrue(never.contains("0 hours a day on 365 days a year (the days " + taken), never);
  }
}
