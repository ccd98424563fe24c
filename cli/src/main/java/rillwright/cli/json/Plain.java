package rillwright.cli.json;

import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * A value without parts.
 *
 * @param type as a schema calls it
 * @param facets what else it must be, as members of a schema
 * @param written how
 */
record Plain<T>(String type, Consumer<Json> facets, BiConsumer<Json, T> written)
    implements Value<T> {
  static final Value<String> WORDS = new Plain<>("string", json -> {}, Json::words);

  @Override
  public void write(Json json, T value) {
    written.accept(json, value);
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    type(schema, type, orNull);
    facets.accept(schema);
  }

  static void type(Json schema, String type, boolean orNull) {
    schema.name("type");
    if (orNull) {
      schema.array(
          () -> {
            schema.words(type);
            schema.words("null");
          });
    } else {
      schema.words(type);
    }
  }
}
