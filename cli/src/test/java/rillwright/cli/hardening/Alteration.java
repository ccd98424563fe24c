package rillwright.cli.hardening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** One place of a project's maps and lists altered: taken out, exchanged, written otherwise. */
final class Alteration {
  private static final List<Object> STRANGE =
      Arrays.asList(
          null,
          true,
          false,
          0,
          1,
          -1,
          1.5,
          1e9,
          "",
          " ",
          "1",
          "1.0",
          "yes",
          "No",
          "2",
          "1/2",
          "0 m",
          "2 in",
          "2 inch",
          "5 gph",
          "30 %",
          "1 ft .. 2 ft",
          "1 m ± 2 cm",
          "12 C",
          "catalogue",
          "pond",
          "to be chosen",
          "want",
          "running",
          "pump off",
          "stone",
          "4 psi",
          "3 min",
          "9 EUR",
          "9 EUR/m",
          "1e-3 m",
          "1 m 5 cm",
          "1,5 m",
          "$5",
          "-0",
          "+3 ft",
          "−2 m",
          "90",
          "90 deg",
          List.of(),
          List.of(1),
          Map.of(),
          Map.of("k", 1),
          Map.of("length", "2 m"));

  private final Draw draw;
  private final Pool pool;
  private final List<String> shown = new ArrayList<>();

  /**
   * Alterations by a seed.
   *
   * @param draw decides
   * @param pool what projects say
   */
  Alteration(Draw draw, Pool pool) {
    this.draw = draw;
    this.pool = pool;
  }

  /** What projects say: their fields, and values by field. */
  record Pool(List<String> fields, Map<String, List<Object>> values) {
    static Pool of(List<Map<String, Object>> projects) {
      Map<String, List<Object>> values = new LinkedHashMap<>();
      projects.forEach(project -> gather(project, values));
      values.put("want", values.get("target"));
      return new Pool(List.copyOf(values.keySet()), values);
    }

    private static void gather(Object node, Map<String, List<Object>> values) {
      if (node instanceof Map<?, ?> map) {
        map.forEach(
            (key, value) -> {
              values.computeIfAbsent((String) key, any -> new ArrayList<>()).add(value);
              gather(value, values);
            });
      } else if (node instanceof List<?> list) {
        list.forEach(item -> gather(item, values));
      }
    }
  }

  /** The project with one or two places altered. */
  @SuppressWarnings("unchecked")
  Map<String, Object> of(Map<String, Object> project) {
    Map<String, Object> altered = (Map<String, Object>) copy(project);
    int changes = draw.chance(0.3) ? 2 : 1;
    for (int i = 0; i < changes; i++) {
      List<Object> places = new ArrayList<>();
      gather(altered, places);
      Object place = draw.oneOf(places);
      if (place instanceof Map<?, ?> map) {
        alter((Map<String, Object>) map);
      } else {
        alter((List<Object>) place);
      }
    }
    return altered;
  }

  private void alter(Map<String, Object> map) {
    List<String> keys = List.copyOf(map.keySet());
    if (keys.isEmpty() || draw.chance(0.25)) {
      String field = draw.oneOf(pool.fields());
      put(map, field, draw.oneOf(pool.values().get(field)));
      return;
    }
    String key = draw.oneOf(keys);
    switch (draw.below(5)) {
      case 0 -> {
        map.remove(key);
        shown.add("without " + key);
      }
      case 1 -> put(map, draw.oneOf(pool.fields()), map.remove(key));
      case 2 -> put(map, key, draw.oneOf(STRANGE));
      case 3 -> put(map, key, draw.oneOf(pool.values().getOrDefault(key, STRANGE)));
      default -> put(map, key, otherwise(map.get(key)));
    }
  }

  private void alter(List<Object> list) {
    int at = draw.below(list.size());
    if (draw.chance(0.3)) {
      shown.add("without item " + at + " " + list.remove(at));
    } else {
      Object value = draw.chance(0.5) ? draw.oneOf(STRANGE) : otherwise(list.get(at));
      list.set(at, copy(value));
      shown.add("item " + at + " " + value);
    }
  }

  private void put(Map<String, Object> map, String key, Object value) {
    map.put(key, copy(value));
    shown.add(key + ": " + value);
  }

  /** A scalar in another writing: its number alone, as a text, with blanks, a range. */
  private Object otherwise(Object value) {
    String text = String.valueOf(value);
    return switch (draw.below(9)) {
      case 0 -> text.replaceFirst(" .*", "");
      case 1 -> text.replace(" ", "");
      case 2 -> " " + text.replace(" ", "  ") + " ";
      case 3 -> text.toUpperCase(Locale.ROOT);
      case 4 -> text + " .. " + text;
      case 5 -> text + " ± " + text;
      case 6 -> "-" + text;
      case 7 -> List.of(value == null ? "" : value);
      default -> text;
    };
  }

  private static void gather(Object node, List<Object> places) {
    if (node instanceof Map<?, ?> map) {
      places.add(map);
      map.values().forEach(value -> gather(value, places));
    } else if (node instanceof List<?> list && !list.isEmpty()) {
      places.add(list);
      list.forEach(item -> gather(item, places));
    }
  }

  private static Object copy(Object node) {
    if (node instanceof Map<?, ?> map) {
      Map<String, Object> copy = new LinkedHashMap<>();
      map.forEach((key, value) -> copy.put((String) key, copy(value)));
      return copy;
    }
    if (node instanceof List<?> list) {
      List<Object> copy = new ArrayList<>();
      list.forEach(item -> copy.add(copy(item)));
      return copy;
    }
    return node;
  }

  @Override
  public String toString() {
    return shown.toString();
  }
}
