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
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Run;
import rillwright.cli.schema.PublishedSchema;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The published schema and the reader on altered projects, both ways. One: what {@code check} takes
 * the schema takes, which is to say that what the schema refuses {@code check} refuses. The other:
 * what the schema takes {@code check} takes, but for what no schema says, which is listed here:
 * names of things that must be there, sizes of numbers, what parts find around them. What stands in
 * a condition the schema does not describe. {@code -Drillwright.files=50000} tries that many.
 */
class SchemaAgreementTest {
  private static final int FILES = Integer.getInteger("rillwright.files", 2500);
  private static final long SEED = Long.getLong("rillwright.seed", 1);
  private static final int MOST_SHOWN = 12;
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PublishedSchema.PROJECT.text(), InputFormat.JSON);

  /** What is wrong with a file although its fields are there and each is of its kind. */
  private static final Pattern BEYOND_ANY_SCHEMA =
      Pattern.compile(
          String.join(
              "|",
              ": condition \"",
              // names of other things in the file, of files and of what the catalogue has
              "there is no (point|pump) \"",
              "(gauge|valve|line|pump|at): there is no \"",
              "there is no such file",
              "is not a size of .* in the catalogue",
              "has no running pump",
              "is called .* too; give each gauge its own name",
              // how large a quantity is, by itself or beside others
              "is not possible; it must be",
              "is one value; write",
              "what stands after .* must be greater than 0",
              "the rows go from the floor up",
              "the water stands below the lowest row",
              "the channel must be at least as wide as the weir",
              "flow and head must both rise from point to point",
              "a filter takes some head at any flow",
              "the roughness is more than 5 % of the inside diameter",
              "this contradicts the reading of the same quantity",
              "is the same as .* in point",
              "is the last and is not below the first",
              "a loss needs a point with a flow and a head",
              "these points are no filter's",
              // what stands around it: the line's pipe, the points at its ends, what was read
              "its bore is not known",
              "the friction of its wall is not known",
              "a size needs a material",
              "nothing in this line takes any head",
              "no line ends at this",
              "the line ends where it begins",
              "a skimmer's line must begin at a basin",
              "a line end at a tee has no loss of its own",
              "a stream begins at a fall or an outlet",
              "a level is read at a chamber or a basin",
              "which pond is not clear",
              "within: .* (expected|has no unit)",
              "a flow per width needs the width of the fall",
              "a valve is named only with",
              "how far a valve is open is said only with",
              "use one currency in a file"));

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
      boolean beyond = check.err().lines().allMatch(BEYOND_ANY_SCHEMA.asPredicate());
      if (check.status() == 0 ? !errors.isEmpty() : !beyond && errors.isEmpty()) {
        wrong.add("seed " + SEED + ", " + i + " " + alteration + "\n" + check.err() + errors);
      }
    }
    assertEquals(List.of(), wrong, () -> String.join("\n\n", wrong));
    assertTrue(taken > FILES / 20 && taken < FILES * 19 / 20, taken + " taken");
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
