package rillwright.cli.schema;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema of what {@code weak} answers. Numbers are invented, for the shape only. */
class WeakSchemaTest {
  private static final String WEAK =
      """
      {"kind": "weak", "estimate": "only",
       "title": "Demo 40", "changed": ["a.b=c"],
       "readings": [{"at": "fall", "flowM3PerS": 0.002, "within": 0.0001, "asBuilt": 0.003},
         {"gauge": "high tap", "pressurePa": 900, "within": 50, "when": "pump off", "asBuilt": null}],
       "causes": [{"cause": "pump worn", "at": "supply", "part": 1, "probability": 0.7, "size": 0.6,
         "sizeUnit": "1", "predicted": [0.002, null]},
        {"cause": "none of these", "at": null, "part": null, "probability": 0.3, "size": null,
         "sizeUnit": null, "predicted": [null, null]}],
       "firstGroup": [{"cause": "pump worn", "at": "supply", "part": 1}],
       "separatedBy": null,
       "next": [{"reading": {"gauge": "low tap", "pressurePa": null, "within": "1.7 kPa",
           "when": "valve shut", "valve": "supply"}, "bits": 0.4, "minutes": 5, "bitsPerMinute": 0.08,
         "predicted": [{"cause": "pump worn", "at": "supply", "part": 1, "value": 38000}],
         "predictedByPairs": [41000]}],
       "pairs": [{"causes": [{"cause": "net clogged", "at": "intake", "part": 2, "size": 0.9,
             "sizeUnit": "1"},
            {"cause": "other pump", "at": "supply", "part": 1, "size": null, "sizeUnit": null,
             "choice": "P-180"}], "probability": 0.25, "predicted": [0.002, null]}],
       "pairsLead": false, "slightIncluded": false}
      """;

  private static final String WEAK_CAUSES =
      """
      {"kind": "weakCauses", "causes": [{"cause": "pump worn", "at": "supply", "part": 1, "quantity": "heads",
         "from": 0.4, "to": 0.98, "log": false, "prior": 1}],
       "signs": {"sudden": {"pump worn": 0.4}}}
      """;

  @ParameterizedTest
  @ValueSource(strings = {WEAK, WEAK_CAUSES})
  void resultsAreValid(String result) {
    ResultSchema.assertTakes(result);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"cause\": \"pump worn\" | \"cause\": \"pump tired\"",
        "\"probability\": 0.7 | \"probability\": 1.7",
        "\"part\": 1 | \"part\": 0",
        "\"sizeUnit\": \"1\" | \"sizeUnit\": \"ft\"",
        "\"pressurePa\": null | \"pressurePa\": 3",
        "\"bits\": 0.4, | ",
        "\"bitsPerMinute\": 0.08, | ",
        "\"separatedBy\": null, | ",
        "\"when\": \"valve shut\" | \"when\": \"running\"",
        "\"gauge\": \"low tap\", | ",
        "\"gauge\": \"high tap\", | ",
        "\"pressurePa\": 900, | ",
        "\"pressurePa\": 900 | \"pressurePa\": null",
        "\"within\": 50 | \"within\": \"50 Pa\"",
        "\"title\": \"Demo 40\", | ",
        "\"changed\": [\"a.b=c\"], | "
      })
  void brokenWeakAnswerIsRefused(String right, String wrong) {
    ResultSchema.assertRefusesBroken(WEAK, right, wrong);
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
    ResultSchema.assertRefusesBroken(WEAK_CAUSES, right, wrong);
  }
}
