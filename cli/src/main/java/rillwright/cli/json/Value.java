package rillwright.cli.json;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A kind of JSON values: how one is written, and what the schema says of it.
 *
 * @param <T> what a value is written of
 */
public interface Value<T> {
  /** Words. */
  static Value<String> words() {
    return Plain.WORDS;
  }

  /** Words, at least a letter. */
  static Value<String> someWords() {
    return new Plain<>("string", json -> json.name("minLength").whole(1), Json::words);
  }

  /** True or false. */
  static Value<Boolean> truth() {
    return new Plain<>("boolean", json -> {}, Json::truth);
  }

  /** A whole number. */
  static Value<Long> whole() {
    return new Plain<>("integer", json -> {}, Json::whole);
  }

  /** Writes one. */
  void write(Json json, T value);

  /**
   * Writes the members of an object of a schema that describe it.
   *
   * @param orNull whether null may stand in its place
   */
  void describe(Json schema, Definitions definitions, boolean orNull);

  /** What its numbers are measured in; empty for none. */
  default String unit() {
    return "";
  }

  /** The same, written of something else in which it is seen. */
  default <B> Value<B> of(Function<B, T> seen) {
    return new Seen<>(this, seen);
  }

  /** A whole number, at least so large. */
  static Value<Long> wholeFrom(long least) {
    return new Plain<>("integer", json -> json.name("minimum").whole(least), Json::whole);
  }

  /** Words of a pattern: a regular expression. */
  static Value<String> matching(String pattern) {
    return new Plain<>("string", json -> json.name("pattern").words(pattern), Json::words);
  }

  /** One of some words. */
  static Value<String> oneOf(List<String> words) {
    return new OneOf(words);
  }

  /** One of some words. */
  static Value<String> oneOf(String... words) {
    return new OneOf(List.of(words));
  }

  /** Always true. */
  static Value<Boolean> alwaysTrue() {
    return new Plain<>("boolean", json -> json.name("const").truth(true), Json::truth);
  }

  /** Always null. */
  static <T> Value<T> nothing() {
    return new Plain<>("null", json -> {}, (json, any) -> json.nothing());
  }

  /** An array. */
  static <T> Value<Collection<? extends T>> list(Value<T> elements) {
    return new Elements<>(elements, 0);
  }

  /** An array of at least one element. */
  static <T> Value<Collection<? extends T>> someOf(Value<T> elements) {
    return new Elements<>(elements, 1);
  }

  /** An object whose members are alike, each under its own name. */
  static <T> Value<Map<String, ? extends T>> byName(Value<T> members) {
    return new ByName<>(words(), members);
  }

  /** The same with the names that there may be. */
  static <T> Value<Map<String, ? extends T>> byName(Value<String> names, Value<T> members) {
    return new ByName<>(names, members);
  }

  /** Some things by their names, in their order. */
  static <T, V> Map<String, V> map(
      Collection<? extends T> all, Function<T, String> name, Function<T, ? extends V> value) {
    Map<String, V> named = new LinkedHashMap<>();
    all.forEach(one -> named.put(name.apply(one), value.apply(one)));
    return named;
  }

  /** The value, or null where there is none. */
  static <T> Value<Optional<? extends T>> orNull(Value<T> kind) {
    return new OrNull<>(kind);
  }

  /** One of several kinds. */
  static <T> Value<T> either(Function<T, Value<T>> which, List<? extends Value<T>> kinds) {
    return new Either<>(which, List.copyOf(kinds));
  }
}
