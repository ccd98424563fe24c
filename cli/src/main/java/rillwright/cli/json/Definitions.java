package rillwright.cli.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The shapes with a name that a schema has met, each described once. */
public final class Definitions {
  private final Map<String, Shape<?>> byName = new LinkedHashMap<>();

  private Definitions() {}

  /**
   * The schema of some answers: an object is of that one whose {@code kind} it has.
   *
   * @param id of the schema
   * @param title of the schema
   * @param meaning of the whole
   * @param answers shapes made by {@link Shape#answer}
   */
  public static String schema(String id, String title, String meaning, List<Shape<?>> answers) {
    return Json.text(
        json -> json.object(() -> new Definitions().whole(json, id, title, meaning, answers)));
  }

  private void whole(Json json, String id, String title, String meaning, List<Shape<?>> answers) {
    json.name("$schema").words("https://json-schema.org/draft/2020-12/schema");
    json.name("$id").words(id);
    json.name("title").words(title);
    json.name("description").words(meaning);
    anyOf(json, answers, false);
    json.name("$defs").object(() -> definitions(json));
  }

  /** Each may meet further ones. */
  private void definitions(Json json) {
    List<Shape<?>> described = new ArrayList<>();
    while (described.size() < byName.size()) {
      for (Shape<?> shape : List.copyOf(byName.values())) {
        if (!described.contains(shape)) {
          described.add(shape);
          json.name(shape.name()).object(() -> shape.define(json, this));
        }
      }
    }
  }

  /** A reference to a shape that is described elsewhere. */
  void refer(Json schema, Shape<?> shape) {
    if (byName.putIfAbsent(shape.name(), shape) != null && byName.get(shape.name()) != shape) {
      throw new IllegalStateException("two shapes are called " + shape.name());
    }
    schema.name("$ref").words("#/$defs/" + shape.name());
  }

  /** One of several kinds. */
  void anyOf(Json schema, List<? extends Value<?>> kinds, boolean orNull) {
    schema
        .name("anyOf")
        .array(
            () -> {
              kinds.forEach(kind -> schema.object(() -> kind.describe(schema, this, false)));
              if (orNull) {
                schema.object(() -> schema.name("type").words("null"));
              }
            });
  }
}
