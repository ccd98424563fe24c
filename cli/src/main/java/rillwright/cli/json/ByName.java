package rillwright.cli.json;

import java.util.Map;

/** An object whose members are alike, each under its own name. */
record ByName<T>(Value<String> names, Value<T> kind) implements Value<Map<String, ? extends T>> {
  @Override
  public void write(Json json, Map<String, ? extends T> value) {
    json.object(() -> value.forEach((name, member) -> kind.write(json.name(name), member)));
  }

  @Override
  public String unit() {
    return kind.unit();
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    Plain.type(schema, "object", orNull);
    if (names != Plain.WORDS) {
      schema.name("propertyNames").object(() -> names.describe(schema, definitions, false));
    }
    schema.name("additionalProperties").object(() -> kind.describe(schema, definitions, false));
  }
}
