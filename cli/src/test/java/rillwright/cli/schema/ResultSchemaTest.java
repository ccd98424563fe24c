package rillwright.cli.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.junit.jupiter.params.provider.MethodSource;
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

  /** Invented numbers, for the shape only. */
  private static final String TRIED =
      """
      "model": "reed 40", "count": 1, "arranged": "parallel", "speed": 0.8, "does": true,
       "fallsM3PerS": {"high fall": 0.003},
       "operating": {"flowM3PerS": 0.003, "headM": 4, "powerW": 200, "efficiency": 0.5},
       "throttled": null, "shareOfRange": 0.6, "shareOfBestEfficiencyFlow": null,
       "energyPerYear": 1700, "price": null, "costOverYears": 4000, "verdict": "does it",
       "findings": []\
      """;

  private static final String PUMPS =
      """
      {"title": "Otter Bend", "changed": [], "duty": DUTY, "years": 10, "currency": "USD",
       "candidates": [{TRIED}], "faults": ["a.csv:1:1: empty"], "notBalanced": [],
       "effort": {"solves": 100, "seconds": 0.1, "solvesPerSecond": 1000}}
      """
          .replace("DUTY", DUTY)
          .replace("TRIED", TRIED);

  private static final String PIPES =
      """
      {"title": "Otter Bend", "changed": ["a.b=c"], "duty": DUTY, "years": 10, "currency": null,
       "choices": [{"sizes": {"up": "2 in"}, TRIED, "materialCost": 90,
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
                 "autumn": {"does": true, "fallsM3PerS": {"high fall": 0.002}, "verdict": "does it"},
                 "frozen": {"does": false, "fallsM3PerS": {}, "verdict": "no balance"}}}],
               "faults"\
              """)
          .replace(
              "\"notBalanced\": [],",
              """
              "notBalanced": [], "offered": false,
               "conditions": [{"name": "autumn",
                 "changes": [{"quantity": "lines.intake.skimmer.clogged", "value": "40 %"}]},
                 {"name": "frozen", "changes": []}],\
              """);

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

  private static final String BALANCE =
      """
      {"title": "Otter Bend", "changed": ["lines.up.valve.open=50 %"], "share": 0.9,
       "governing": "high fall",
       "falls": {"high fall": {"flowM3PerS": 0.0027, "wantM3PerS": 0.003},
         "notch": {"flowM3PerS": 0.001, "wantM3PerS": null}},
       "valves": [
         {"line": "up", "part": "valve", "open": 0.6, "degreesFromOpen": 36, "k": 9.1, "sensitivity": 1e-5},
         {"line": "side", "part": "valve 2", "open": 0.5, "degreesFromOpen": null, "k": 4.5,
          "sensitivity": null}],
       "order": ["up", "side"], "pumpShortM": 0.4, "findings": []}
      """;

  private static final String WEAK =
      """
      {"title": "Otter Bend", "changed": ["a.b=c"],
       "readings": [{"at": "fall", "flow": 0.002, "within": 0.0001, "asBuilt": 0.003},
         {"gauge": "high tap", "pressure": 900, "within": 50, "when": "pump off", "asBuilt": null}],
       "causes": [{"cause": "pump worn", "at": "supply", "part": 1, "probability": 0.7, "size": 0.6,
         "sizeUnit": "1", "predicted": [0.002, null]},
        {"cause": "none of these", "at": null, "part": null, "probability": 0.3, "size": null,
         "sizeUnit": null, "predicted": [null, null]}],
       "firstGroup": [{"cause": "pump worn", "at": "supply", "part": 1}],
       "toldApartBy": null,
       "next": [{"reading": {"gauge": "low tap", "pressure": null, "within": "1.7 kPa",
           "when": "valve shut", "valve": "supply"}, "bits": 0.4,
         "predicted": [{"cause": "pump worn", "at": "supply", "part": 1, "value": 38000}]}]}
      """;

  private static final String WEAK_CAUSES =
      """
      {"causes": [{"cause": "pump worn", "at": "supply", "part": 1, "quantity": "heads",
         "from": 0.4, "to": 0.98, "log": false, "prior": 1}],
       "signs": {"sudden": {"pump worn": 0.4}}}
      """;

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"cause\": \"pump worn\" | \"cause\": \"pump tired\"",
        "\"probability\": 0.7 | \"probability\": 1.7",
        "\"part\": 1 | \"part\": 0",
        "\"sizeUnit\": \"1\" | \"sizeUnit\": \"ft\"",
        "\"pressure\": null | \"pressure\": 3",
        "\"bits\": 0.4, | ",
        "\"toldApartBy\": null, | ",
        "\"valve\": \"supply\" | \"tap\": \"supply\"",
        "\"when\": \"valve shut\" | \"when\": \"running\"",
        "\"gauge\": \"low tap\", | ",
        "\"gauge\": \"high tap\", | ",
        "\"pressure\": 900, | ",
        "\"pressure\": 900 | \"pressure\": null",
        "\"within\": 50 | \"within\": \"50 Pa\"",
        "\"title\": \"Otter Bend\", | ",
        "\"changed\": [\"a.b=c\"], | "
      })
  void brokenWeakAnswerIsRefused(String right, String wrong) {
    String broken = WEAK.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(WEAK, broken, "the case changes something");
    assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty());
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"prior\": 1 | \"prior\": -1",
        "\"log\": false, | ",
        "\"sudden\" | \"suddenly\"",
        "{\"pump worn\": 0.4} | {\"pump worn\": 0}"
      })
  void brokenListOfCausesIsRefused(String right, String wrong) {
    String broken = WEAK_CAUSES.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(WEAK_CAUSES, broken, "the case changes something");
    assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty());
  }

  private static final String STREAM =
      """
      {"title": "Otter Bend", "changed": [],
       "streams": {"main": {"flowM3PerS": 0.002, "reaches": [
         {"kind": "step", "depthM": 0.01, "velocityMPerS": 0.3, "surfaceWidthM": 0.6, "froude": 1,
          "criticalDepthM": 0.01, "crestHeadM": null, "volumeM3": 0, "leastVolumeM3": 0,
          "mostVolumeM3": 0, "gravelM3": 0},
         {"kind": "pool", "depthM": 0.4, "velocityMPerS": null, "surfaceWidthM": null,
          "froude": null, "criticalDepthM": null, "crestHeadM": 0.02, "volumeM3": 0.02,
          "leastVolumeM3": 0.01, "mostVolumeM3": 0.03, "gravelM3": 0}], "inTransitM3": 0.02}},
       "transit": {"streams": 0, "gravel": 0, "pools": 0.02, "boxes": 0, "filters": 0, "pipes": 0},
       "basins": {"pond": {"restLevelM": 0, "runningLevelM": -0.01, "stoppedLevelM": 0.01,
         "firstFillM3": 0.4, "daysToStarve": 3, "starveLevelM": -0.05, "lossMPerDay": null,
         "runsOverM3": 0}},
       "course": null, "findings": []}
      """;

  @ParameterizedTest
  @ValueSource(
      strings = {
        SOLVED,
        STREAM,
        DUTY,
        CHART,
        ODDS,
        BALANCE,
        CONDITIONS,
        WEAK,
        WEAK_CAUSES,
        "{\"title\": \"Otter Bend\", \"points\": {}, \"lines\": {}, \"pumps\": {}, \"notes\": [],"
            + " \"findings\": []}",
        "{\"title\": \"\", \"line\": \"up\", \"asTheyStand\": null, \"throttled\": null,"
            + " \"governing\": null, \"greatestFlowM3PerS\": 0.001, \"findings\": []}"
      })
  void resultsAreValid(String result) {
    assertEquals(List.of(), SCHEMA.validate(result, InputFormat.JSON));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("choices")
  void choicesAreValid(String result) {
    assertEquals(List.of(), SCHEMA.validate(result, InputFormat.JSON));
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
        "\"does\": true | \"does\": \"yes\"",
        "\"efficiency\": 0.5 | \"effort\": 0.5",
        "\"energyPerYear\": 1700 | \"energyPerYear\": -1",
        "\"verdict\": \"does it\" | \"verdict\": \"\"",
        "\"verdict\": \"does it\", | \"verdict\": \"does it\", \"more\": 1,",
        "\"findings\": [], \"materialCost\" | \"findings\": [], \"more\": 1, \"materialCost\"",
        "\"years\": 10 | \"years\": 0"
      })
  void brokenChoicesAreRefused(String right, String wrong) {
    for (String choice : choices()) {
      String broken = choice.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
      if (!broken.equals(choice)) {
        assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty(), broken);
      }
    }
    assertTrue(choices().stream().anyMatch(choice -> choice.contains(right)), right);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"worstCondition\": \"frozen\", | ",
        "\"offered\": false, | ",
        "\"name\": \"autumn\" | \"named\": \"autumn\"",
        "\"value\": \"40 %\" | \"value\": 40",
        "\"verdict\": \"no balance\" | \"verdict\": \"\"",
        "\"does\": false, | ",
        "\"fallsM3PerS\": {}, | \"fallsM3PerS\": null,"
      })
  void brokenConditionsOfChoicesAreRefused(String right, String wrong) {
    String broken = JUDGED_PUMPS.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(JUDGED_PUMPS, broken, "the case changes something");
    assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty(), broken);
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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"kind\": \"step\" | \"kind\": \"drop\"",
        "\"froude\": 1, | ",
        "\"pools\": 0.02, | ",
        "\"restLevelM\": 0, | \"restLevelM\": null,",
        "\"daysToStarve\": 3 | \"daysToStarve\": -3",
        "\"course\": null | \"course\": 1",
        "\"inTransitM3\": 0.02 | \"inTransit\": 0.02"
      })
  void brokenStreamIsRefused(String right, String wrong) {
    String broken = STREAM.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(STREAM, broken, "the case changes something");
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
  @CsvSource(
      delimiter = '|',
      value = {
        "\"share\": 0.9 | \"share\": -0.9",
        "\"governing\": \"high fall\", | ",
        "\"wantM3PerS\": null | \"wishM3PerS\": null",
        "\"part\": \"valve 2\" | \"part\": \"ball valve\"",
        "\"open\": 0.6 | \"open\": 60",
        "\"degreesFromOpen\": 36 | \"degreesFromOpen\": 136",
        "\"k\": 4.5, | ",
        "\"order\": [\"up\", \"side\"], | ",
        "\"pumpShortM\": 0.4 | \"pumpShortM\": -0.4"
      })
  void brokenBalanceIsRefused(String right, String wrong) {
    String broken = BALANCE.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(BALANCE, broken, "the case changes something");
    assertFalse(SCHEMA.validate(broken, InputFormat.JSON).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"pumps\": []}",
        "{\"title\": \"no findings\"}",
        "{\"title\": \"no points\", \"lines\": {}, \"pumps\": {}, \"notes\": [], \"findings\": []}",
        "{\"lips\": [{\"name\": \"metal\"}]}",
        "{\"title\": \"\", \"line\": \"up\", \"asTheyStand\": {\"flowM3PerS\": 1, \"headM\": 2},"
            + " \"throttled\": null, \"governing\": null, \"findings\": []}"
      })
  void whatIsNoResultIsRefused(String result) {
    assertFalse(SCHEMA.validate(result, InputFormat.JSON).isEmpty());
  }
}
