package rillwright.cli.json;

import java.util.function.Function;

/** A value that is written of what is seen in something else. */
record Seen<B, T>(Value<T> kind, Function<B, T> seen) implements Value<B> {
  @Override
  public void write(Json json, B value) {
    kind.write(json, seen.apply(value));
  }

  @Override
  public String unit() {
    return kind.unit();
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    kind.describe(schema, definitions, orNull);
  }
}
