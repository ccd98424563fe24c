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

  private static final String WEAK =
      """
      {"causes": [{"cause": "pump worn", "at": "supply", "part": 1, "probability": 0.7, "size": 0.6,
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
        "\"gauge\": \"low tap\", | "
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

  @ParameterizedTest
  @ValueSource(
      strings = {
        SOLVED,
        DUTY,
        CHART,
        WEAK,
        WEAK_CAUSES,
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
