package rillwright.cli.schema;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The published schema of what {@code balance} answers. Numbers are invented, for the shape only.
 */
class BalanceSchemaTest {
  private static final String BALANCE =
      """
      {"kind": "balance", "estimate": "only",
       "title": "Demo 40", "changed": ["lines.up.valve.open=50 %"], "targetFraction": 0.9,
       "governing": "high fall",
       "falls": {"high fall": {"flowM3PerS": 0.0027, "targetM3PerS": 0.003},
         "notch": {"flowM3PerS": 0.001, "targetM3PerS": null}},
       "valves": [
         {"line": "up", "part": "valve", "opening": 0.6, "degreesFromOpen": 36, "lossCoefficient": 9.1, "sensitivityM3PerSPerDegree": 1e-5},
         {"line": "side", "part": "valve 2", "opening": 0.5, "degreesFromOpen": null, "lossCoefficient": 4.5,
          "sensitivityM3PerSPerDegree": null}],
       "order": ["up", "side"], "missingHeadM": 0.4,
       "running": {"powerW": 260, "waterPowerW": 90.5, "wireToWater": 0.348, "hoursPerDay": 24,
         "daysPerYear": 210, "energyKwhPerYear": 1310, "costPerYear": null, "currency": null,
         "turnoversPerDay": {"pond": 12.5}},
       "findings": []}
      """;

  @ParameterizedTest
  @ValueSource(strings = {BALANCE})
  void resultsAreValid(String result) {
    ResultSchema.assertTakes(result);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"kind\": \"balance\" | \"kind\": \"odds\"",
        "\"kind\": \"balance\", | ",
        "\"targetFraction\": 0.9 | \"targetFraction\": -0.9",
        "\"governing\": \"high fall\", | ",
        "\"targetM3PerS\": null | \"wantM3PerS\": null",
        "\"part\": \"valve 2\" | \"part\": \"ball valve\"",
        "\"opening\": 0.6 | \"opening\": 60",
        "\"degreesFromOpen\": 36 | \"degreesFromOpen\": 136",
        "\"lossCoefficient\": 4.5, | ",
        "\"order\": [\"up\", \"side\"], | ",
        "\"missingHeadM\": 0.4 | \"missingHeadM\": -0.4"
      })
  void brokenBalanceIsRefused(String right, String wrong) {
    ResultSchema.assertRefusesBroken(BALANCE, right, wrong);
  }
}
