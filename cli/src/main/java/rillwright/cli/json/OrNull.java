package rillwright.cli.json;

import java.util.Optional;

/** A value, or null where there is none. */
record OrNull<T>(Value<T> kind) implements Value<Optional<? extends T>> {
  @Override
  public void write(Json json, Optional<? extends T> value) {
    if (value.isPresent()) {
      kind.write(json, value.get());
    } else {
      json.nothing();
    }
  }

  @Override
  public String unit() {
    return kind.unit();
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    kind.describe(schema, definitions, true);
  }
}
