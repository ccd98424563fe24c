package rillwright.cli.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import rillwright.cli.command.CatalogueCommand;

/**
 * The published schema of results: what the catalogue prints, pictures, and what is no result.
 * Numbers are invented, for the shape only.
 */
class ResultSchemaTest {
  private static final String CHART =
      """
      {"kind": "chart", "estimate": "only",
       "title": "Demo 40", "line": "supply",
       "systemCurve": [{"flowM3PerS": 0, "headM": 2.1}, {"flowM3PerS": 0.003, "headM": 3.6}],
       "greatestFlowM3PerS": null, "pumpCurve": [{"flowM3PerS": 0, "headM": 4.1}],
       "pumpCurveBeyond": [], "changed": [],
       "operatingPoint": {"flowM3PerS": 0.002, "headM": 3.2, "powerW": 260}}
      """;

  @ParameterizedTest
  @ValueSource(strings = {CHART})
  void resultsAreValid(String result) {
    ResultSchema.assertTakes(result);
  }

  @Test
  void furtherMembersAreTaken() {
    ResultSchema.assertTakes(CHART.replace("\"line\"", "\"more\": 1, \"line\""));
    ResultSchema.assertTakes(CHART.replace("\"powerW\"", "\"more\": 1, \"powerW\""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "pipes", "check valves", "beds", "elbow 90", "boulders"})
  void whatTheCatalogueReallyPrintsIsValid(String asked) {
    StringWriter out = new StringWriter();
    CommandLine command = new CommandLine(new CatalogueCommand()).setOut(new PrintWriter(out));
    String words = asked.isEmpty() ? "--format json" : asked + " --format json";
    assertEquals(0, command.execute(words.split(" ")));
    ResultSchema.assertTakes(out.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"kind\": \"fish\"}",
        "{\"kind\": \"catalogue\", \"pipes\": []}",
        "{\"kind\": \"check\", \"estimate\": \"only\", \"title\": \"no findings\"}",
        "{\"kind\": \"check\", \"estimate\": \"only\", \"title\": \"no points\", \"lines\": {},"
            + " \"pumps\": {}, \"notes\": [], \"findings\": []}",
        "{\"kind\": \"catalogue\", \"lips\": [{\"name\": \"metal\"}]}",
        "{\"kind\": \"duty\", \"title\": \"\", \"line\": \"up\", \"asTheyStand\": {\"flowM3PerS\":"
            + " 1, \"headM\": 2}, \"throttled\": null, \"governing\": null, \"findings\": []}"
      })
  void whatIsNoResultIsRefused(String result) {
    ResultSchema.assertRefuses(result);
  }
}
