package rillwright.cli.file.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

/**
 * Edits at random, one after another, keep a file readable, and it says what the same changes make
 * of plain maps and lists, which this test changes by itself.
 */
class RandomEditsTest {
  private static final int EDITS = 1000;
  private static final long SEED = 7;
  private static final int IN_A_ROW = 20;
  private static final List<String> TEXTS =
      List.of(
          "3 in",
          "a: b",
          "# no",
          "1,5 m",
          "x, y",
          "it's",
          "say \"so\"",
          "- 1",
          "{a",
          "5",
          "é 😀",
          "null");

  private final Random random = new Random(SEED);

  @Test
  void theFileSaysWhatTheChangesSay() throws IOException {
    List<Path> files = EditedExamplesTest.examples();
    int done = 0;
    while (done < EDITS) {
      Path file = files.get(random.nextInt(files.size()));
      String text = SourceText.read(file).text();
      boolean isJson = random.nextInt(5) == 0;
      EditedText edited =
          EditedText.of(
              isJson
                  ? new SourceText("p.json", json(plain(TreeReader.read(SourceText.read(file)))))
                  : new SourceText(
                      file.toString(), random.nextBoolean() ? text : text.replace("\n", "\r\n")));
      for (int i = 0; i < IN_A_ROW; i++) {
        Object model = plain(edited.tree());
        EditedText before = edited;
        String edit = "seed " + SEED + ", edit " + done + " of " + file;
        edited = edit(before, model);
        done += edited == before ? 0 : 1;
        assertEquals(model, plain(TreeReader.read(edited.source())), edit);
        assertNothingElseChanged(before.text(), edited.text(), edit);
      }
    }
  }

  /** Beside the lines that an edit touches, which are few, all lines are as before. */
  private static void assertNothingElseChanged(String before, String after, String edit) {
    List<String> kept = new ArrayList<>(List.of(after.split("(?<=\n)")));
    List<String> gone = new ArrayList<>(List.of(before.split("(?<=\n)")));
    gone.removeIf(kept::remove);
    assertTrue(gone.size() <= 20 && before.length() > 0, edit + ": " + gone);
    if (after.contains("\r\n")) {
      assertEquals(after, after.replaceAll("\r?\n", "\r\n"), edit);
    }
  }

  /** Makes one edit of a text, and of its model. */
  private EditedText edit(EditedText text, Object model) {
    Map<String, Object> root = map(model);
    Map<String, Object> points = map(root.get("points"));
    Map<String, Object> lines = map(root.get("lines"));
    String point = one(points);
    String line = one(lines);
    List<Object> parts = list(map(lines.get(line)).get("parts"));
    String value = TEXTS.get(random.nextInt(TEXTS.size()));
    switch (random.nextInt(8)) {
      case 0 -> {
        String field = one(map(points.get(point)));
        if (field.equals("level") || field.equals("shape")) {
          return text;
        }
        map(points.get(point)).put(field, value);
        return text.set("points.\"" + point + "\"." + field + "=" + value);
      }
      case 1 -> {
        String added = "new " + random.nextInt(1000);
        Map<String, Object> fields = new LinkedHashMap<>(Map.of("kind", "tee"));
        if (random.nextBoolean()) {
          points.putIfAbsent(added, fields);
          return text.tree().findMap("points").orElseThrow().find(added).isPresent()
              ? text
              : text.add("points." + added, "{kind: tee}");
        }
        fields.put("parts", new ArrayList<>(List.of(Map.of("run", "3 ft"))));
        boolean isThere = lines.putIfAbsent(added, fields) != null;
        return isThere ? text : text.add("lines." + added, "{kind: tee, parts: [run: 3 ft]}");
      }
      case 2 -> {
        if (points.size() < 2) {
          return text;
        }
        points.remove(point);
        return text.remove("points.\"" + point + "\"");
      }
      case 3 -> {
        int number = 1 + random.nextInt(parts.size() + 1);
        parts.add(
            number - 1, new LinkedHashMap<>(Map.of("loss", new LinkedHashMap<>(Map.of("k", "2")))));
        return text.insert("lines.\"" + line + "\".parts", number, "loss: {k: 2}");
      }
      case 4 -> {
        if (parts.isEmpty()) {
          return text;
        }
        int number = 1 + random.nextInt(parts.size());
        parts.remove(number - 1);
        return text.remove("lines.\"" + line + "\".parts." + number);
      }
      case 5 -> {
        if (parts.isEmpty()) {
          return text;
        }
        int from = 1 + random.nextInt(parts.size());
        int to = 1 + random.nextInt(parts.size());
        parts.add(to - 1, parts.remove(from - 1));
        return text.move("lines.\"" + line + "\".parts", from, to);
      }
      case 6 -> {
        map(lines.get(line)).put("note", value);
        return text.set("lines.\"" + line + "\".note=" + value);
      }
      default -> {
        String name = "named " + value.replace("\"", "") + random.nextInt(1000);
        rename(root, point, name);
        return text.rename("points.\"" + point + "\"", name);
      }
    }
  }

  private void rename(Map<String, Object> root, String from, String to) {
    root.put("points", renamed(map(root.get("points")), from, to));
    for (String section : List.of("points", "lines", "streams")) {
      map(root.getOrDefault(section, Map.of()))
          .values()
          .forEach(
              one ->
                  List.of("from", "to", "returns to")
                      .forEach(field -> map(one).replace(field, from, to)));
    }
    list(root.getOrDefault("readings", List.of()))
        .forEach(reading -> map(reading).replace("at", from, to));
    map(root.getOrDefault("conditions", Map.of()))
        .values()
        .forEach(
            condition ->
                map(condition)
                    .computeIfPresent("points", (name, all) -> renamed(map(all), from, to)));
  }

  private static Map<String, Object> renamed(Map<String, Object> map, String from, String to) {
    Map<String, Object> renamed = new LinkedHashMap<>();
    map.forEach((key, value) -> renamed.put(key.equals(from) ? to : key, value));
    return renamed;
  }

  private String one(Map<String, Object> map) {
    return List.copyOf(map.keySet()).get(random.nextInt(map.size()));
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(Object object) {
    return (Map<String, Object>) object;
  }

  @SuppressWarnings("unchecked")
  private static List<Object> list(Object object) {
    return (List<Object>) object;
  }

  private static Object plain(Node node) {
    if (node instanceof MapNode map) {
      Map<String, Object> plain = new LinkedHashMap<>();
      for (Entry entry : map.entries()) {
        plain.put(entry.key(), plain(entry.value()));
      }
      return plain;
    }
    return node instanceof ListNode list
        ? list.items().stream()
            .map(RandomEditsTest::plain)
            .collect(Collectors.toCollection(ArrayList::new))
        : ((Scalar) node).text();
  }

  /** A model as JSON on several lines, indented with tabs. */
  private static String json(Object model) {
    return json(model, "\n\t");
  }

  private static String json(Object model, String fresh) {
    if (model instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(it -> Quoting.json((String) it.getKey()) + ":" + json(it.getValue(), fresh + "\t"))
          .collect(Collectors.joining("," + fresh, "{" + fresh, "}"));
    }
    return model instanceof List<?> list
        ? list.stream()
            .map(it -> json(it, fresh + "\t"))
            .collect(Collectors.joining(", ", "[", "]"))
        : Quoting.json((String) model);
  }
}
