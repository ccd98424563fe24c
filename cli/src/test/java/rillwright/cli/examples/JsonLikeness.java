package rillwright.cli.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * Two JSON texts say the same: names, order and words exactly, numbers to nine digits (the last
 * ones differ between processors), effort and errors left out.
 */
final class JsonLikeness {
  private static final double RELATIVE = 1e-9;
  private static final double ABSOLUTE = 1e-12;
  private static final Set<String> EFFORT = Set.of("iterations", "residuals");

  private JsonLikeness() {}

  static void assertAlike(String expected, String found) {
    ObjectMapper mapper = new ObjectMapper();
    compare("", mapper.readTree(expected), mapper.readTree(found));
  }

  private static void compare(String at, JsonNode expected, JsonNode found) {
    assertEquals(expected.getNodeType(), found.getNodeType(), at);
    if (expected.isNumber()) {
      double value = expected.doubleValue();
      assertEquals(value, found.doubleValue(), Math.max(ABSOLUTE, RELATIVE * Math.abs(value)), at);
    } else if (expected.isObject()) {
      assertEquals(expected.propertyNames().toString(), found.propertyNames().toString(), at);
      for (Map.Entry<String, JsonNode> member : expected.properties()) {
        if (!EFFORT.contains(member.getKey())) {
          compare(at + "/" + member.getKey(), member.getValue(), found.get(member.getKey()));
        }
      }
    } else if (expected.isArray()) {
      assertEquals(expected.size(), found.size(), at);
      for (int i = 0; i < expected.size(); i++) {
        compare(at + "/" + i, expected.get(i), found.get(i));
      }
    } else {
      assertEquals(expected, found, at);
    }
  }
}
