package rillwright.cli.json;

import java.util.List;

/** One of some words. */
record OneOf(List<String> words) implements Value<String> {
  OneOf {
    words = List.copyOf(words);
  }

  @Override
  public void write(Json json, String value) {
    json.words(value);
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    schema
        .name("enum")
        .array(
            () -> {
              words.forEach(schema::words);
              if (orNull) {
                schema.nothing();
              }
            });
  }
}
