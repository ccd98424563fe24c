package rillwright.cli.schema;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema of what {@code odds} answers. Numbers are invented, for the shape only. */
class OddsSchemaTest {
  private static final String ODDS =
      """
      {"kind": "odds", "estimate": "only",
       "title": "Demo 40", "samples": 10000, "seed": 1,
       "falls": {"high fall": {"chance": 0.83, "p5M3PerS": 0.002, "p50M3PerS": 0.003, "p95M3PerS": 0.004},
         "overflow": {"chance": null, "p5M3PerS": null, "p50M3PerS": null, "p95M3PerS": null}},
       "chanceOfAll": 0.83,
       "drivers": [{"quantity": "lines.supply.run.length", "written": "38 ft ± 4 ft", "varianceShare": 0.7,
         "falls": {"high fall": 0.7, "overflow": 0}}],
       "running": null,
       "tally": {"starved": 12, "withoutBalance": 0, "notFound": 0, "contradictory": 0},
       "findings": [{"code": "chance", "at": "high fall", "message": "It gets its target.",
         "severity": "note", "figures": [{"name": "chance", "value": 0.83, "unit": "1"}]}]}
      """;

  @ParameterizedTest
  @ValueSource(strings = {ODDS})
  void resultsAreValid(String result) {
    ResultSchema.assertTakes(result);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"samples\": 10000 | \"samples\": 0",
        "\"seed\": 1, | ",
        "\"chance\": 0.83 | \"chance\": 83",
        "\"p95M3PerS\": 0.004 | \"p99M3PerS\": 0.004",
        "\"varianceShare\": 0.7 | \"varianceShare\": \"70 %\"",
        "\"quantity\": \"lines.supply.run.length\", | ",
        "\"notFound\": 0, | ",
        "\"severity\": \"note\" | \"severity\": \"grave\"",
        "\"unit\": \"1\" | \"unit\": \"gph\"",
        "\"high fall\": 0.7 | \"high fall\": 1.7"
      })
  void brokenOddsAreRefused(String right, String wrong) {
    ResultSchema.assertRefusesBroken(ODDS, right, wrong);
  }
}
