package rillwright.cli.schema;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema of what {@code solve} answers. Numbers are invented, for the shape only. */
class SolveSchemaTest {
  private static final String SOLVED =
      """
      {"kind": "solve", "estimate": "only",
       "title": "Demo 40", "converged": true, "iterations": 6,
       "residuals": {"flowM3PerS": 2e-16, "headM": 3e-13},
       "points": {
         "pond": {"headM": 0.0, "determined": true, "flowM3PerS": -0.003},
         "chamber": {"headM": -0.6, "determined": true, "missingHeadM": 0.04},
         "split": {"headM": 2.9, "determined": true, "pressurePa": 32300.5},
         "high fall": {"headM": 2.17, "determined": true, "flowM3PerS": 0.003, "crestHeadM": 0.02, "brinkDepthM": 0.009},
         "notch": {"headM": null, "determined": false, "flowM3PerS": 0, "crestHeadM": 0, "brinkDepthM": null}},
       "lines": {
         "supply": {"flowM3PerS": 0.003, "velocityMPerS": 1.2, "headLossM": -3.5, "determined": true, "open": true,
           "parts": [
             {"part": "entrance", "headLossM": 0.04},
             {"part": "pump", "flowM3PerS": 0.003, "headM": 4.4, "powerW": null,
              "shutOffHeadM": 5.5, "rangeM3PerS": 0.005, "npshAvailableM": 9.8, "npshRequiredM": null},
             {"part": "gauge", "name": "low tap", "pressurePa": 41000},
             {"part": "run", "headLossM": 0.5, "reynolds": 61000, "frictionFactor": 0.02}]},
         "side": {"flowM3PerS": 0, "velocityMPerS": null, "headLossM": null, "determined": false,
           "open": false, "parts": [
             {"part": "run", "headLossM": null, "reynolds": 0, "frictionFactor": null},
             {"part": "gauge", "name": "dry tap", "pressurePa": null}]}},
       "running": {"powerW": 260, "waterPowerW": 90.5, "wireToWater": 0.348, "hoursPerDay": 24,
         "daysPerYear": 210, "energyKwhPerYear": 1310, "costPerYear": null, "currency": null,
         "turnoversPerDay": {"pond": 12.5}},
       "findings": [{"code": "starved-chamber", "at": "chamber", "message": "The chamber is empty.",
         "severity": "problem", "figures": []}]}
      """;

  private static final String CONDITIONS =
      """
      {"kind": "solveConditions", "estimate": "only",
       "title": "Demo 40", "offered": false, "allTargetsMet": true,
       "worst": {"high fall": {"condition": "autumn", "targetM3PerS": 0.002, "targetFraction": 1.1, "met": true}},
       "conditions": [
         {"name": "as written", "changes": [], "noBalance": null, "solve":
      """
          + SOLVED
          + """
             },
             {"name": "autumn", "changes": [{"quantity": "lines.intake.skimmer.clogged", "value": "40 %"}],
              "noBalance": "no balance: nothing comes in", "solve": null}]}
          """;

  @ParameterizedTest
  @ValueSource(
      strings = {
        SOLVED,
        CONDITIONS,
        "{\"kind\": \"check\", \"estimate\": \"only\", \"title\": \"Demo 40\", \"points\": {},"
            + " \"lines\": {}, \"pumps\": {}, \"notes\": [], \"findings\": [], \"changed\": []}"
      })
  void resultsAreValid(String result) {
    ResultSchema.assertTakes(result);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"converged\": true | \"converged\": false",
        "\"iterations\": 6 | \"iterations\": 6.5",
        "\"residuals\": {\"flowM3PerS\": 2e-16, | \"residuals\": {",
        "\"headM\": 0.0, | ",
        "\"headM\": null, \"determined\": false | \"headM\": null",
        "\"severity\": \"problem\", | ",
        "\"missingHeadM\": 0.04 | \"missingHeadM\": -0.04",
        "\"crestHeadM\": 0.02 | \"crestHeadM\": \"0.02 m\"",
        "\"velocityMPerS\": 1.2 | \"velocityMPerS\": -1.2",
        "\"headLossM\": null, \"determined\": false | \"headLossM\": null",
        "\"open\": true, | ",
        "\"part\": \"entrance\" | \"part\": \"beginning\"",
        "\"headM\": 4.4, \"powerW\": null | \"headM\": 4.4",
        "\"name\": \"low tap\", | ",
        "\"reynolds\": 61000, | ",
        "\"frictionFactor\": 0.02 | \"frictionFactor\": 0",
        "\"wireToWater\": 0.348, | ",
        "\"hoursPerDay\": 24 | \"hoursPerDay\": 25",
        "\"code\": \"starved-chamber\" | \"code\": \"Starved chamber\"",
        "\"message\": \"The chamber is empty.\" | \"message\": \"\""
      })
  void brokenSolutionIsRefused(String right, String wrong) {
    ResultSchema.assertRefusesBroken(SOLVED, right, wrong);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"offered\": false | \"offered\": \"no\"",
        "\"met\": true | \"met\": null",
        "\"quantity\": \"lines.intake.skimmer.clogged\" | \"what\": \"the skimmer\"",
        "\"converged\": true | \"converged\": false",
        ", \"solve\": null | "
      })
  void brokenConditionsAreRefused(String right, String wrong) {
    ResultSchema.assertRefusesBroken(CONDITIONS, right, wrong);
  }
}
