package rillwright.cli.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.command.Run;
import rillwright.cli.schema.PublishedSchema;

/** Enter alone makes a project of each job that balances, in either unit system. */
class EveryJobTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PublishedSchema.PROJECT.text(), InputFormat.JSON);

  @TempDir private Path folder;

  static Stream<Arguments> jobs() {
    return Questions.named(Questions.JOB).choices().stream()
        .flatMap(job -> Stream.of(Arguments.of("us", job), Arguments.of("metric", job)));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("jobs")
  void enterAloneMakesAProjectThatBalances(String units, String job) throws IOException {
    Script script = Script.of(units, job);
    Path file = folder.resolve("p.yaml");
    script.hold(file, Answers.NONE, Map.of());
    Files.writeString(file, Draft.of(script.kept(), file).text());
    assertEquals(List.of(), SCHEMA.validate(Files.readString(file), InputFormat.YAML));
    Run check = Run.of("check", file.toString());
    assertEquals(List.of(0, ""), List.of(check.status(), check.err()));
    assertTrue(check.out().contains("No errors found in the file."), check.out());
    Run solve = Run.of("solve", file.toString(), "--strict");
    assertEquals(List.of(0, ""), List.of(solve.status(), solve.err()), solve.out());
    assertTrue(solve.out().contains(" is invented, and with it what flows,"), solve.out());
    assertTrue(Files.readString(file).contains("No real pump. This curve is invented"));
    assertTrue(Files.readAllLines(file).stream().allMatch(line -> line.length() <= 102));
    Files.writeString(file, Files.readString(file).replace("kind: invented", "kind: external"));
    String chosen = Run.of("solve", file.toString()).out();
    assertTrue(chosen.contains("No warnings."), chosen);
  }

  @Test
  void everyLipOfTheCatalogueIsOffered() {
    Question lip = Questions.all().stream().filter(it -> it.key().equals("lip")).findFirst().get();
    String asked = lip.words().apply(Answers.NONE);
    assertTrue(Catalogue.standard().lips().stream().allMatch(asked::contains), asked);
  }

  @Test
  void aFallOfWhichNothingIsAskedSuggestsAUsualPump() {
    Answers answers = Answers.NONE.with("units", "metric").with("job", "fall");
    assertNotEquals("9 m3/h at 3 m", PlannedDuty.suggestedFor(answers));
    assertEquals("9 m3/h at 3 m", PlannedDuty.suggestedFor(answers.with("target", "0 m3/h")));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("jobs")
  void withoutAPumpDutyGoesOn(String units, String job) throws IOException {
    Path file = folder.resolve("p.yaml");
    Answers answers = Answers.NONE.with("units", units).with("job", job).with("pump", "none yet");
    Files.writeString(file, Draft.of(answers, file).text());
    Run duty = Run.of("duty", file.toString());
    assertEquals(List.of(0, ""), List.of(duty.status(), duty.err()), duty.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"us", "metric"})
  void theReadingsOfAnExistingJobNeedOnlyTheirNumbers(String units) throws IOException {
    Path file = folder.resolve("p.yaml");
    Answers answers = Answers.NONE.with("units", units).with("job", "existing");
    String text = Draft.of(answers, file).text();
    int at = text.indexOf("# readings:");
    Files.writeString(
        file,
        text.substring(0, at) + text.substring(at).replaceAll("(?m)^# ", "").replace("___", "9.5"));
    Run weak = Run.of("weak", file.toString());
    assertEquals(List.of(0, ""), List.of(weak.status(), weak.err()), weak.out());
    Run.assertReported(weak.out(), "Gauge G1, valve of \"supply\" shut", "Signs: for weeks");
  }
}
