package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.schema.PublishedSchema;

/**
 * Whole reports of one invented project. After a change that is meant, run with
 * -Drillwright.rewrite=true and read the difference like code.
 */
@Isolated
class ReportGoldenTest {
  private static final String PROJECT = Run.resource("solve/demo-10.yaml").toString();

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "solve-us.txt, solve, text, us",
    "solve-metric.txt, solve, text, metric",
    "solve.json, solve, json, us",
    "check-us.txt, check, text, us",
    "check-metric.txt, check, text, metric",
    "check.json, check, json, us",
  })
  void printsWhatItPrintedBefore(String golden, String command, String format, String show)
      throws IOException {
    Run run = Run.of(command, PROJECT, "--format", format, "--set", "show=" + show);
    assertEquals("", run.err());
    assertEquals(0, run.status());
    Path expected = Run.resource("solve/" + golden);
    if (Boolean.getBoolean("rillwright.rewrite")) {
      Files.writeString(expected, run.out());
    }
    assertEquals(Files.readString(expected), run.out());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"solve", "check"})
  void textIsAtMostAHundredColumnsWideAndUncoloured(String command) {
    Run run = Run.of(command, PROJECT);
    for (String line : run.out().lines().toList()) {
      assertTrue(line.codePointCount(0, line.length()) <= 100, line);
      assertEquals(line.stripTrailing(), line);
    }
    assertEquals(-1, run.out().indexOf('\u001b'));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"solve", "check"})
  void jsonHasThePublishedShape(String command) {
    Run run = Run.of(command, PROJECT, "--format", "json");
    var schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(PublishedSchema.RESULT.text(), InputFormat.JSON);
    assertEquals(List.of(), schema.validate(run.out(), InputFormat.JSON));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"text", "json"})
  void theSameBytesComeOutWhereverItRuns(String format) {
    Run first = Run.of("solve", PROJECT, "--format", format);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("hi-IN-u-nu-deva"));
      assertEquals(first, Run.of("solve", PROJECT, "--format", format));
    } finally {
      Locale.setDefault(before);
    }
  }
}
