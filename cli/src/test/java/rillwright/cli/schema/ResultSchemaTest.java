package rillwright.cli.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import rillwright.cli.command.CatalogueCommand;

class ResultSchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PublishedSchema.RESULT.text(), InputFormat.JSON);

  /** Invented numbers, for the shape only. */
  private static final String SOLVED =
      """
      {"title": "Otter Bend", "converged": true, "iterations": 6,
       "residuals": {"flowM3PerS": 2e-16, "headM": 3e-13},
       "points": {
         "pond": {"headM": 0.0, "flowM3PerS": -0.003},
         "chamber": {"headM": -0.6, "missingHeadM": 0.04},
         "split": {"headM": 2.9, "pressurePa": 32300.5},
         "high fall": {"headM": 2.17, "flowM3PerS": 0.003, "crestHeadM": 0.02, "brinkDepthM": 0.009},
         "notch": {"headM": null, "determined": false, "flowM3PerS": 0, "brinkDepthM": null}},
       "lines": {
         "supply": {"flowM3PerS": 0.003, "velocityMPerS": 1.2, "headLossM": -3.5, "open": true,
           "parts": [
             {"part": "entrance", "headLossM": 0.04},
             {"part": "pump", "flowM3PerS": 0.003, "headM": 4.4, "powerW": null},
             {"part": "gauge", "name": "low tap", "pressurePa": 41000},
             {"part": "run", "headLossM": 0.5, "reynolds": 61000, "frictionFactor": 0.02}]},
         "side": {"flowM3PerS": 0, "velocityMPerS": null, "headLossM": null, "determined": false,
           "open": false, "parts": [
             {"part": "run", "headLossM": null, "reynolds": 0, "frictionFactor": null},
             {"part": "gauge", "name": "dry tap", "pressurePa": null}]}},
       "running": {"powerW": 260, "waterPowerW": 90.5, "wireToWater": 0.348, "hoursPerDay": 24,
         "daysPerYear": 210, "energyKwhPerYear": 1310, "costPerYear": null, "currency": null,
         "turnoversPerDay": {"pond": 12.5}},
       "findings": [{"code": "starved-chamber", "at": "chamber", "message": "The chamber is empty."}]}
      """;

  private static final String DUTY =
      """
      {"title": "Otter Bend", "line": "supply",
       "asTheyStand": {"flowM3PerS": 0.004, "headM": 4.1, "fallsM3PerS": {"high fall": 0.003}},
       "throttled": {"flowM3PerS": 0.0035, "headM": 3.9}, "governing": "high fall", "findings": []}
      """;

  private static final String CHART =
      """
      {"title": "Otter Bend", "line": "supply",
       "systemCurve": [{"flowM3PerS": 0, "headM": 2.1}, {"flowM3PerS": 0.003, "headM": 3.6}],
       "pumpCurve": [{"flowM3PerS": 0, "headM": 4.1}],
       "operatingPoint": {"flowM3PerS": 0.002, "headM": 3.2, "powerW": 260}}
      """;

  private static final String CONDITIONS =
      """
      {"title": "Otter Bend", "offered": false, "allWishesMet": true,
       "worst": {"high fall": {"condition": "autumn", "wantM3PerS": 0.002, "shareOfWish": 1.1, "met": true}},
       "conditions": [
         {"name": "as written", "changes": [], "noBalance": null, "solve":
      """
          + SOLVED
          + """
             },
             {"name": "autumn", "changes": [{"quantity": "lines.intake.skimmer.clogged", "value": "40 %"}],
              "noBalance": "no balance: nothing comes in", "solve": null}]}
          """;

  private static final String ODDS =
      """
      {"title": "Otter Bend", "samples": 10000, "seed": 1,
       "falls": {"high fall": {"chance": 0.83, "p5M3PerS": 0.002, "p50M3PerS": 0.003, "p95M3PerS": 0.004},
         "overflow": {"chance": null, "p5M3PerS": null, "p50M3PerS": null, "p95M3PerS": null}},
       "chanceOfAll": 0.83,
       "drivers": [{"quantity": "lines.supply.run.length", "written": "38 ft ± 4 ft", "share": 0.7,
         "falls": {"high fall": 0.7, "overflow": 0}}],
       "tally": {"starved": 12, "withoutBalance": 0, "notFound": 0, "contradictory": 0},
       "findings": [{"code": "chance", "at": "high fall", "message": "It gets its wish."}]}
      """;

  @ParameterizedTest
  @ValueSource(
      strings = {
        SOLVED,
        DUTY,
        CHART,
        ODDS,
        CONDITIONS,
        "{\"title\": \"Otter Bend\", \"findings\": []}",
        "{\"title\": \"\", \"line\": \"up\", \"asTheyStand\": null, \"throttled\": null,"
            + " \"governing\": null, \"greatestFlowM3PerS\": 0.001, \"findings\": []}"
      })
  void resultsAreValid(String result) {
    assertEquals(List.of(), SCHEMA.validate(result, InputFormat.JSON));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "pipes", "check valves", "beds", "elbow 90", "boulders"})
  void whatTheCatalogueReallyPrintsIsValid(String asked) {
    StringWriter out = new StringWriter();
    CommandLine command = new CommandLine(new CatalogueCommand()).setOut(new PrintWriter(out));
    String words = asked.isEmpty() ? "--format json" : asked + " --format json";
    assertEquals(0, command.execute(words.split(" ")));
    assertEquals(List.of(), SCHEMA.validate(out.toString(), InputFormat.JSON));
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"converged\": true | \"converged\": false",
        "\"iterations\": 6 | \"iterations\": 6.5",
        "\"residuals\": {\"flowM3PerS\": 2e-16, | \"residuals\": {",
        "\"headM\": 0.0, \"flowM3PerS\": -0.003 | \"flowM3PerS\": -0.003",
        "\"headM\": null, \"determined\": false | \"headM\": null",
        "\"headM\": 2.9, | \"headM\": 2.9, \"determined\": false,",
        "\"missingHeadM\": 0.04 | \"missingHeadM\": -0.04",
        "\"crestHeadM\": 0.02 | \"crestHeadM\": \"0.02 m\"",
        "\"velocityMPerS\": 1.2 | \"velocityMPerS\": -1.2",
        "\"flowM3PerS\": 0, \"velocityMPerS\": null | \"flowM3PerS\": 0.1, \"velocityMPerS\": null",
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
    String broken = SOLVED.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(SOLVED, broken, "the case changes something");
    assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty());
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"samples\": 10000 | \"samples\": 0",
        "\"seed\": 1, | ",
        "\"chance\": 0.83 | \"chance\": 83",
        "\"p95M3PerS\": 0.004 | \"p99M3PerS\": 0.004",
        "\"share\": 0.7 | \"share\": \"70 %\"",
        "\"quantity\": \"lines.supply.run.length\", | ",
        "\"notFound\": 0, | ",
        "\"high fall\": 0.7 | \"high fall\": 1.7"
      })
  void brokenOddsAreRefused(String right, String wrong) {
    String broken = ODDS.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(ODDS, broken, "the case changes something");
    assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty());
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
    String broken = CONDITIONS.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(CONDITIONS, broken, "the case changes something");
    assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"pumps\": []}",
        "{\"title\": \"no findings\"}",
        "{\"findings\": []}",
        "{\"lips\": [{\"name\": \"metal\"}]}",
        "{\"title\": \"\", \"line\": \"up\", \"asTheyStand\": {\"flowM3PerS\": 1, \"headM\": 2},"
            + " \"throttled\": null, \"governing\": null, \"findings\": []}"
      })
  void whatIsNoResultIsRefused(String result) {
    assertFalse(SCHEMA.validate(result, InputFormat.JSON).isEmpty());
  }
}
