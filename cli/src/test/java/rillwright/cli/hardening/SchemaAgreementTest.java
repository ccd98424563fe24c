package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Run;
import rillwright.cli.schema.PublishedSchema;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The published schema and the reader on altered projects: what {@code check} takes the schema
 * takes, so what the schema refuses {@code check} refuses; and a field that {@code check} does not
 * know, or a number without its unit, the schema refuses too. {@code -Drillwright.files=50000}
 * tries that many.
 */
class SchemaAgreementTest {
  private static final int FILES = Integer.getInteger("rillwright.files", 2500);
  private static final long SEED = Long.getLong("rillwright.seed", 1);
  private static final int MOST_SHOWN = 12;
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PublishedSchema.PROJECT.text(), InputFormat.JSON);

  @TempDir private Path folder;

  @Test
  void takeAndRefuseTheSame() throws IOException {
    List<Map<String, Object>> whole = projects();
    Alteration.Pool pool = Alteration.Pool.of(whole);
    Path file = folder.resolve("altered.json");
    List<String> wrong = new ArrayList<>();
    int taken = 0;
    for (int i = 0; i < FILES && wrong.size() < MOST_SHOWN; i++) {
      Draw draw = new Draw(SEED * 1_000_003 + i);
      Alteration alteration = new Alteration(draw, pool);
      String json = ProjectTree.json(alteration.of(draw.oneOf(whole)));
      Files.writeString(file, json);
      Run check = Run.of("check", file.toString());
      List<Error> errors = SCHEMA.validate(json, InputFormat.JSON);
      taken += check.status() == 0 ? 1 : 0;
      boolean mustRefuse = check.err().lines().anyMatch(SchemaAgreementTest::isOfTheSchema);
      if (check.status() == 0 ? !errors.isEmpty() : mustRefuse && errors.isEmpty()) {
        wrong.add("seed " + SEED + ", " + i + " " + alteration + "\n" + check.err() + errors);
      }
    }
    assertEquals(List.of(), wrong, () -> String.join("\n\n", wrong));
    assertTrue(taken > FILES / 20 && taken < FILES * 19 / 20, taken + " taken");
  }

  /** What stands in a condition is not described by the schema. */
  private static boolean isOfTheSchema(String fault) {
    return (fault.contains("there is no field") || fault.contains("has no unit"))
        && !fault.contains(": condition \"");
  }

  /** Examples, a project that uses everything, and drawn ones. */
  private List<Map<String, Object>> projects() throws IOException {
    List<Map<String, Object>> projects = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("..", "examples"))) {
      for (Path example : files.sorted().toList()) {
        if (example.toString().endsWith(".csv")) {
          Path pumps = Files.createDirectories(folder.resolve("pumps"));
          Files.write(pumps.resolve(example.getFileName()), Files.readAllBytes(example));
          Files.write(folder.resolve(example.getFileName()), Files.readAllBytes(example));
        } else if (example.toString().endsWith(".yaml")) {
          String text = Files.readString(example);
          if (text.contains("\nlines:")) {
            projects.add(read(text));
          }
        }
      }
    }
    Files.writeString(folder.resolve("pumps/D-60.csv"), "flow [m3/h],head [m]\n0,4\n10,2\n");
    String everyPart =
        Files.readString(Path.of("src/test/resources/rillwright/cli/schema/every-part.yaml"));
    for (int i = 0; i < 10; i++) {
      projects.add(read(everyPart));
      projects.add(RandomProject.of(i));
    }
    return projects;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> read(String text) {
    return new YAMLMapper().readValue(text, Map.class);
  }
}
