package rillwright.cli.command.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.outline.ReadingForm;
import rillwright.cli.schema.FieldRow;
import rillwright.cli.schema.FieldRows;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Help pages have every field that a reader takes, because a reader says itself what it takes. */
class HelpFieldsTest {
  private static final FieldRows FIELDS = FieldRows.published();
  private static final String UNKNOWN = "zzzzzz";
  private static final Pattern REFUSED =
      Pattern.compile("there is no field \"" + UNKNOWN + "\"; choose (.*)");
  private static final Pattern TABLE = Pattern.compile("@fields ([^:]*): .*");

  @TempDir private Path folder;

  @Test
  void everyFieldThatAReaderTakesStandsOnAPage() throws IOException {
    Map<String, Set<String>> onPages = onPages();
    Files.createDirectories(folder.resolve("pumps"));
    Files.writeString(folder.resolve("pumps/D-60.csv"), "flow [m3/h],head [m]\n0,4\n10,2\n");
    String text =
        Files.readString(Path.of("src/test/resources/rillwright/cli/schema/every-part.yaml"));
    Map<?, ?> tree = new YAMLMapper().readValue(text, Map.class);
    tree.remove("conditions"); // its fields are those of the file
    List<List<Object>> maps = new ArrayList<>();
    addMaps(tree, List.of(), maps);
    List<String> missing = new ArrayList<>();
    int asked = 0;
    for (List<Object> way : maps) {
      Files.writeString(
          folder.resolve("p.json"), new ObjectMapper().writeValueAsString(with(tree, way)));
      Matcher refused = REFUSED.matcher(faults(folder.resolve("p.json")));
      if (refused.find()) {
        asked++;
        Set<String> known = onPages.getOrDefault(parent(way, tree), Set.of());
        for (String field : refused.group(1).replace(" …", "").split(", ", -1)) {
          if (!known.contains(field) && !field.equals("kind")) {
            missing.add(parent(way, tree) + ": " + field);
          }
        }
      }
    }
    assertEquals(new TreeSet<>(), new TreeSet<>(missing));
    assertTrue(asked > 60, asked + " places asked");
    assertEquals(Set.of(), minus(new HashSet<>(ReadingForm.ALL), onPages.get("reading")));
  }

  private static String faults(Path file) {
    try {
      ProjectReader.read(file, List.of());
      return "";
    } catch (InvalidInput wrong) {
      return wrong.getMessage();
    }
  }

  @Test
  void everyFieldSaysWhatItIsAndWhatItTakes() throws IOException {
    List<String> bare = new ArrayList<>();
    for (String definition : definitions()) {
      for (FieldRow row : FIELDS.of(definition)) {
        if (row.takes().isEmpty() || row.meaning().isEmpty()) {
          bare.add(definition + ": " + row.name());
        }
      }
    }
    assertEquals(List.of(), bare);
  }

  /** The names on all pages by what they stand in. */
  private static Map<String, Set<String>> onPages() {
    Map<String, Set<String>> names = new HashMap<>();
    for (String definition : definitions()) {
      String top = definition.substring(definition.indexOf('/') + 1);
      for (FieldRow row : FIELDS.of(definition)) {
        String[] steps = row.name().split("\\.", -1);
        String in = steps.length == 1 ? top : steps[steps.length - 2];
        names.computeIfAbsent(in, it -> new HashSet<>()).add(steps[steps.length - 1]);
      }
    }
    return names;
  }

  /** The definitions of which a topic shows the fields; "" is the whole file. */
  private static List<String> definitions() {
    List<String> definitions = new ArrayList<>(List.of(""));
    for (Topic topic : Topic.values()) {
      for (String line : topic.lines()) {
        Matcher table = TABLE.matcher(line);
        if (table.matches()) {
          definitions.add(table.group(1));
        }
      }
    }
    return definitions;
  }

  private static void addMaps(Object node, List<Object> way, List<List<Object>> maps) {
    if (node instanceof Map<?, ?> map) {
      maps.add(way);
      map.forEach((key, below) -> addMaps(below, longer(way, key), maps));
    } else if (node instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        addMaps(list.get(i), longer(way, i), maps);
      }
    }
  }

  private static List<Object> longer(List<Object> way, Object step) {
    List<Object> longer = new ArrayList<>(way);
    longer.add(step);
    return longer;
  }

  /** A copy of the tree with an unknown field in the map at the end of a way. */
  private static Object with(Object node, List<Object> way) {
    if (node instanceof List<?> list) {
      List<Object> copy = new ArrayList<>(list);
      copy.set((Integer) way.get(0), with(list.get((Integer) way.get(0)), rest(way)));
      return copy;
    }
    Map<Object, Object> copy = new LinkedHashMap<>((Map<?, ?>) node);
    if (way.isEmpty()) {
      copy.put(UNKNOWN, 1);
    } else {
      copy.put(way.get(0), with(copy.get(way.get(0)), rest(way)));
    }
    return copy;
  }

  private static List<Object> rest(List<Object> way) {
    return way.subList(1, way.size());
  }

  /** In what a map stands, as a page names it. */
  private static String parent(List<Object> way, Object tree) {
    if (way.isEmpty()) {
      return "";
    }
    String section = (String) way.get(0);
    Object last = way.get(way.size() - 1);
    if (way.size() == 2 && section.equals("points")) {
      Map<?, ?> points = (Map<?, ?>) ((Map<?, ?>) tree).get(section);
      return (String) ((Map<?, ?>) points.get(last)).get("kind");
    }
    if (way.size() == 2) {
      return section.substring(0, section.length() - 1);
    }
    for (int i = way.size() - 1; i > 0; i--) {
      if (way.get(i) instanceof String step) {
        return Map.of("reaches", "reach", "parts", "part").getOrDefault(step, step);
      }
    }
    return section;
  }

  private static Set<String> minus(Set<String> all, Set<String> known) {
    all.removeAll(known);
    return all;
  }
}
