package rillwright.cli.schema;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The published schema of what {@code duty}, {@code pumps} and {@code pipes} answer. Numbers are
 * invented, for the shape only.
 */
class ChoiceSchemaTest {
  private static final String DUTY =
      """
      {"kind": "duty", "estimate": "only",
       "title": "Demo 40", "line": "supply",
       "asTheyStand": {"flowM3PerS": 0.004, "headM": 4.1, "fallsM3PerS": {"high fall": 0.003}},
       "throttled": {"flowM3PerS": 0.0035, "headM": 3.9}, "governing": "high fall", "greatestFlowM3PerS": null, "leastShutOffM": null}
      """;

  private static final String TRIED =
      """
      "model": "reed 40", "count": 1, "arranged": "parallel", "speed": 0.8, "meetsTargets": true,
       "fallsM3PerS": {"high fall": 0.003},
       "operatingPoint": {"flowM3PerS": 0.003, "headM": 4, "powerW": 200, "wireToWater": 0.5},
       "throttledPoint": null, "shareOfRange": 0.6, "shareOfBestEfficiencyFlow": null,
       "energyKwhPerYear": 1700, "costPerYear": null, "turnoversPerDay": {}, "price": null, "costOverYears": 4000, "attainableFraction": null, "verdict": "meets the target", "verdictCode": "meets-target",
       "findings": []\
      """;

  private static final String PUMPS =
      """
      {"kind": "pumps", "estimate": "only",
       "title": "Demo 40", "changed": [], "duty": DUTY, "years": 10, "currency": "USD",
       "candidates": [{TRIED}], "faults": ["a.csv:1:1: empty"], "notBalanced": []}
      """
          .replace("DUTY", DUTY)
          .replace("TRIED", TRIED);

  private static final String PIPES =
      """
      {"kind": "pipes", "estimate": "only",
       "title": "Demo 40", "changed": ["a.b=c"], "duty": DUTY, "years": 10, "currency": null,
       "candidates": [{"sizes": {"up": "2 in"}, TRIED, "materialCost": 90,
         "lines": {"up": {"velocityMPerS": 1.5, "frictionMPerM": null, "holdUpM3": 0.02}},
         "holdUpM3": 0.02, "paybackYears": 3.5, "samePump": false}],
       "leastCost": {"up": "2 in"}, "runnerUp": null,
       "nextSizesUp": [{"sizes": {"up": "3 in"}, "moreFlowM3PerS": 0.001,
         "moreCostOverYears": null, "paybackYears": null, "samePump": true}],
       "faults": [], "notBalanced": []}
      """
          .replace("DUTY", DUTY)
          .replace("TRIED", TRIED);

  /** The same pumps, judged in two conditions. */
  private static final String JUDGED_PUMPS =
      PUMPS
          .replace(
              "\"findings\": []}], \"faults\"",
              """
              "findings": [], "worstCondition": "frozen",
               "conditions": {
                 "autumn": {"meetsTargets": true, "fallsM3PerS": {"high fall": 0.002}, "verdict": "meets the target",
                   "verdictCode": "meets-target"},
                 "frozen": {"meetsTargets": false, "fallsM3PerS": {}, "verdict": "no balance",
                   "verdictCode": "no-balance"}}}],
               "faults"\
              """)
          .replace(
              "\"notBalanced\": []",
              """
              "notBalanced": [], "offered": false,
               "conditions": [{"name": "autumn",
                 "changes": [{"quantity": "lines.intake.skimmer.clogged", "value": "40 %"}]},
                 {"name": "frozen", "changes": []}]\
              """);

  @ParameterizedTest
  @ValueSource(
      strings = {
        DUTY,
        "{\"kind\": \"duty\", \"estimate\": \"\", \"title\": \"\", \"line\": \"up\","
            + " \"asTheyStand\": null, \"throttled\": null, \"governing\": null,"
            + " \"greatestFlowM3PerS\": 0.001, \"leastShutOffM\": null, \"findings\": []}"
      })
  void resultsAreValid(String result) {
    ResultSchema.assertTakes(result);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("choices")
  void choicesAreValid(String result) {
    ResultSchema.assertTakes(result);
  }

  static List<String> choices() {
    return List.of(PUMPS, PIPES, JUDGED_PUMPS);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"model\": \"reed 40\", | ",
        "\"count\": 1 | \"count\": 0",
        "\"arranged\": \"parallel\" | \"arranged\": \"side by side\"",
        "\"speed\": 0.8 | \"speed\": 0",
        "\"meetsTargets\": true | \"meetsTargets\": \"yes\"",
        "\"wireToWater\": 0.5 | \"effort\": 0.5",
        "\"energyKwhPerYear\": 1700 | \"energyKwhPerYear\": -1",
        "\"verdict\": \"meets the target\" | \"verdict\": \"\"",
        "\"verdictCode\": \"meets-target\" | \"verdictCode\": \"meets it\"",
        "\"kind\": \"duty\" | \"kind\": \"solve\"",
        "\"years\": 10 | \"years\": 0"
      })
  void brokenChoicesAreRefused(String right, String wrong) {
    for (String choice : choices()) {
      String broken = choice.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
      if (!broken.equals(choice)) {
        ResultSchema.assertRefuses(broken);
      }
    }
    assertTrue(choices().stream().anyMatch(choice -> choice.contains(right)), right);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"name\": \"autumn\" | \"named\": \"autumn\"",
        "\"value\": \"40 %\" | \"value\": 40",
        "\"verdict\": \"no balance\" | \"verdict\": \"\"",
        "\"meetsTargets\": false, | ",
        "\"fallsM3PerS\": {}, | \"fallsM3PerS\": null,"
      })
  void brokenConditionsOfChoicesAreRefused(String right, String wrong) {
    ResultSchema.assertRefusesBroken(JUDGED_PUMPS, right, wrong);
  }
}
