package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Run;
import rillwright.cli.schema.PublishedSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the README shows works as it is written there. */
class ReadmeTest {
  private static final Path README = Path.of("..", "README.md");

  @Test
  void itsFirstFileIsSolved(@TempDir Path folder) throws IOException {
    String readme = Files.readString(README);
    int from = readme.indexOf("```yaml") + "```yaml\n".length();
    Path file = folder.resolve("pond.yaml");
    Files.writeString(file, readme.substring(from, readme.indexOf("```", from)));

    Run run = Run.of("solve", file.toString());

    assertEquals("", run.err());
    assertEquals(0, run.status());
    assertTrue(run.out().contains("upper fall"), run.out());
  }

  @Test
  void whatItLinksToIsThere() throws IOException {
    Matcher links = Pattern.compile("]\\(([^)]+)\\)").matcher(Files.readString(README));
    int count = 0;
    while (links.find()) {
      Path target = README.resolveSibling(links.group(1));
      assertTrue(Files.exists(target), target.toString());
      count++;
    }
    assertTrue(count > 5, count + " links");
  }

  @Test
  void itNamesEveryFieldOfAProject() throws IOException {
    String readme = Files.readString(README);
    Set<String> fields = new TreeSet<>();
    addFields(JsonMapper.shared().readTree(PublishedSchema.PROJECT.text()), fields);
    List<String> missing =
        fields.stream()
            .filter(
                field ->
                    !Pattern.compile("(?<![a-z])" + Pattern.quote(field) + "(?![a-z])")
                        .matcher(readme)
                        .find())
            .toList();
    assertTrue(fields.size() > 80, fields.size() + " fields");
    assertEquals(List.of(), missing);
  }

  private static void addFields(JsonNode schema, Set<String> fields) {
    if (schema.has("properties")) {
      fields.addAll(schema.get("properties").propertyNames());
    }
    schema.forEach(below -> addFields(below, fields));
  }
}
