package rillwright.cli.json;

import java.util.Collection;

/**
 * An array.
 *
 * @param kind of its elements
 * @param least how many there are at least
 */
record Elements<T>(Value<T> kind, int least) implements Value<Collection<? extends T>> {
  @Override
  public void write(Json json, Collection<? extends T> value) {
    json.array(() -> value.forEach(element -> kind.write(json, element)));
  }

  @Override
  public String unit() {
    return kind.unit();
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    Plain.type(schema, "array", orNull);
    if (least > 0) {
      schema.name("minItems").whole(least);
    }
    schema.name("items").object(() -> kind.describe(schema, definitions, false));
  }
}
