package rillwright.cli.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.report.json.Answers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The published schema of results is that of the code. After a change that is meant, run with
 * -Drillwright.rewrite=true and read the difference like code.
 */
class GeneratedSchemaTest {
  @Test
  void publishedSchemaIsThatOfTheAnswers() throws IOException {
    Path published =
        Path.of("src/main/resources/rillwright/schema", PublishedSchema.RESULT.fileName());
    if (Boolean.getBoolean("rillwright.rewrite")) {
      Files.writeString(published, Answers.schema());
    }
    assertEquals(Answers.schema(), Files.readString(published));
  }

  @Test
  void everyMemberSaysWhatItMeans() {
    members().forEach(member -> assertFalse(meaning(member).isBlank(), member.getKey()));
  }

  /** A name that ends in a unit has that unit. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "M3PerS, m3/s",
    "MPerS, m/s",
    "M3, m3",
    "[a-z](?<!Per)M, m",
    "Pa, Pa",
    "[a-z]W, W",
    "[a-z](?<!Per)S, s",
  })
  void unitOfTheNameIsThatOfTheMeaning(String ending, String unit) {
    List<Map.Entry<String, JsonNode>> named =
        members().stream().filter(it -> it.getKey().matches(".*" + ending)).toList();
    assertTrue(!named.isEmpty());
    for (Map.Entry<String, JsonNode> member : named) {
      assertTrue(
          meaning(member).endsWith(" Unit: " + unit + "."),
          member.getKey() + ": " + meaning(member));
    }
  }

  private static String meaning(Map.Entry<String, JsonNode> member) {
    return member.getValue().path("description").asString("");
  }

  private static List<Map.Entry<String, JsonNode>> members() {
    List<Map.Entry<String, JsonNode>> members = new ArrayList<>();
    JsonMapper.shared()
        .readTree(Answers.schema())
        .findValues("properties")
        .forEach(properties -> collect(properties, members));
    return members;
  }

  /** These and, of those that are described where they stand, their own. */
  private static void collect(JsonNode properties, List<Map.Entry<String, JsonNode>> members) {
    for (Map.Entry<String, JsonNode> member : properties.properties()) {
      members.add(member);
      member.getValue().findValues("properties").forEach(inner -> collect(inner, members));
    }
  }
}
