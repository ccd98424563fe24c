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
        BALANCE,
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
        "{\"findings\": []}",
        "{\"lips\": [{\"name\": \"metal\"}]}",
        "{\"title\": \"\", \"line\": \"up\", \"asTheyStand\": {\"flowM3PerS\": 1, \"headM\": 2},"
            + " \"throttled\": null, \"governing\": null, \"findings\": []}"
      })
  void whatIsNoResultIsRefused(String result) {
    assertFalse(SCHEMA.validate(result, InputFormat.JSON).isEmpty());
  }
}
