package rillwright.cli.hardening;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** What a project file says as maps and lists, written as YAML or JSON. */
final class ProjectTree {
  private ProjectTree() {}

  /** Names and values in turn, as a map that keeps their order. */
  static Map<String, Object> map(Object... namesAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      map.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return map;
  }

  static String yaml(Map<String, Object> tree) {
    return new YAMLMapper().writeValueAsString(tree);
  }

  static String json(Map<String, Object> tree) {
    return new ObjectMapper().writeValueAsString(tree);
  }

  /** Turns the order of points and lines round. */
  @SuppressWarnings("unchecked")
  static void reverse(Map<String, Object> tree) {
    for (String section : List.of("points", "lines")) {
      Map<String, Object> written = (Map<String, Object>) tree.get(section);
      List<String> names = new ArrayList<>(written.keySet());
      Collections.reverse(names);
      Map<String, Object> turned = new LinkedHashMap<>();
      names.forEach(name -> turned.put(name, written.get(name)));
      tree.put(section, turned);
    }
  }

  /** Names of the lines that have a part of a kind. */
  @SuppressWarnings("unchecked")
  static List<String> linesWith(String kind, Map<String, Object> tree) {
    List<String> names = new ArrayList<>();
    ((Map<String, Map<String, Object>>) tree.get("lines"))
        .forEach(
            (name, line) -> {
              List<Map<String, Object>> parts = (List<Map<String, Object>>) line.get("parts");
              if (parts.stream().anyMatch(part -> part.containsKey(kind))) {
                names.add(name);
              }
            });
    return names;
  }
}
