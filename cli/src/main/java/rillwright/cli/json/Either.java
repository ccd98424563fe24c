package rillwright.cli.json;

import java.util.List;
import java.util.function.Function;

/** A value of one of several kinds. */
record Either<T>(Function<T, Value<T>> which, List<Value<T>> kinds) implements Value<T> {
  @Override
  public void write(Json json, T value) {
    which.apply(value).write(json, value);
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    definitions.anyOf(schema, kinds, orNull);
  }
}
