package rillwright.cli.schema;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The published schema of what {@code stream} answers. Numbers are invented, for the shape only.
 */
class StreamSchemaTest {
  private static final String STREAM =
      """
      {"kind": "stream", "estimate": "only",
       "title": "Demo 40", "changed": [],
       "streams": {"main": {"flowM3PerS": 0.002, "reaches": [
         {"kind": "step", "depthM": 0.01, "velocityMPerS": 0.3, "surfaceWidthM": 0.6, "froude": 1,
          "criticalDepthM": 0.01, "crestHeadM": null, "volumeM3": 0, "leastVolumeM3": 0,
          "mostVolumeM3": 0, "gravelM3": 0},
         {"kind": "pool", "depthM": 0.4, "velocityMPerS": null, "surfaceWidthM": null,
          "froude": null, "criticalDepthM": null, "crestHeadM": 0.02, "volumeM3": 0.02,
          "leastVolumeM3": 0.01, "mostVolumeM3": 0.03, "gravelM3": 0}], "inTransitM3": 0.02}},
       "transit": {"streamsM3": 0, "gravelM3": 0, "poolsM3": 0.02, "boxesM3": 0, "filtersM3": 0, "pipesM3": 0},
       "basins": {"pond": {"restLevelM": 0, "runningLevelM": -0.01, "stoppedLevelM": 0.01,
         "firstFillM3": 0.4,
         "firstFill": [{"item": "transit", "volumeM3": 0.4}], "daysToStarve": 3, "starveLevelM": -0.05,
         "starveCoverM": null, "starveLowerM": null, "lossMPerDay": null,
         "overflowM": 0.02, "runsOverM3": 0}},
       "running": null, "course": null, "findings": []}
      """;

  @ParameterizedTest
  @ValueSource(strings = {STREAM})
  void resultsAreValid(String result) {
    ResultSchema.assertTakes(result);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"kind\": \"step\" | \"kind\": \"drop\"",
        "\"froude\": 1, | ",
        "\"poolsM3\": 0.02, | ",
        "\"restLevelM\": 0, | \"restLevelM\": null,",
        "\"daysToStarve\": 3 | \"daysToStarve\": -3",
        "\"course\": null | \"course\": 1",
        "\"inTransitM3\": 0.02 | \"inTransit\": 0.02"
      })
  void brokenStreamIsRefused(String right, String wrong) {
    ResultSchema.assertRefusesBroken(STREAM, right, wrong);
  }
}
