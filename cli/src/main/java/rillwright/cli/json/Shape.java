package rillwright.cli.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;

/**
 * An object in JSON: its members in their order, each with its name, unit, meaning and where its
 * value comes from. Immutable; each method gives the shape with one more member. An object may have
 * more members than its shape has: later versions add some.
 *
 * @param <A> what an object is written of
 */
public final class Shape<A> implements Value<A> {
  private final String name;
  private final String meaning;
  private final List<Member<A>> members;

  private record Member<A>(
      String name, Value<?> value, String meaning, boolean always, BiConsumer<Json, A> write) {
    String described() {
      return value.unit().isEmpty() ? meaning : meaning + " Unit: " + value.unit() + ".";
    }
  }

  private Shape(String name, String meaning, List<Member<A>> members) {
    this.name = name;
    this.meaning = meaning;
    this.members = members;
  }

  /** An object that is described where it stands; its member says what it means. */
  public static <A> Shape<A> of() {
    return named("", "");
  }

  /** An object that is described once in a schema, under a name. */
  public static <A> Shape<A> named(String name, String meaning) {
    return new Shape<>(name, meaning, List.of());
  }

  /** An answer: it says what it is by its first member. */
  public static <A> Shape<A> answer(String kind, String meaning) {
    Value<String> only = new Plain<>("string", json -> json.name("const").words(kind), Json::words);
    return Shape.<A>named(kind, meaning).member("kind", only, "What this is.", any -> kind);
  }

  /** A member. */
  public <T> Shape<A> member(
      String member, Value<T> value, String means, Function<? super A, ? extends T> of) {
    return with(
        new Member<>(
            member,
            value,
            means,
            true,
            (json, whole) -> value.write(json.name(member), of.apply(whole))));
  }

  /** A member that is left out where there is nothing to say. */
  public <T> Shape<A> ifAny(
      String member, Value<T> value, String means, Function<A, Optional<? extends T>> of) {
    return with(
        new Member<>(
            member,
            value,
            means,
            false,
            (json, whole) -> of.apply(whole).ifPresent(it -> value.write(json.name(member), it))));
  }

  /** A member that is null where there is nothing to say. */
  public <T> Shape<A> orNull(
      String member, Value<T> value, String means, Function<A, Optional<? extends T>> of) {
    return member(member, Value.orNull(value), means, of);
  }

  /** A member of words. */
  public Shape<A> words(String member, String means, Function<A, String> of) {
    return member(member, Value.words(), means, of);
  }

  /** A member that is true or false. */
  public Shape<A> truth(String member, String means, Predicate<A> of) {
    return member(member, Value.truth(), means, of::test);
  }

  /** A member that is a whole number of at least 0. */
  public Shape<A> count(String member, String means, ToLongFunction<A> of) {
    return member(member, Value.wholeFrom(0), means, of::applyAsLong);
  }

  /** A member that is a number. */
  public Shape<A> number(String member, Quantity quantity, String means, ToDoubleFunction<A> of) {
    return member(member, quantity, means, of::applyAsDouble);
  }

  /** A member that is a number, null where it is not known. */
  public Shape<A> numberOrNull(
      String member, Quantity quantity, String means, Function<A, OptionalDouble> of) {
    return member(member, quantity.orNull(), means, of);
  }

  /** A member that is an array. */
  public <T> Shape<A> list(
      String member,
      Value<T> elements,
      String means,
      Function<A, ? extends Collection<? extends T>> of) {
    return member(member, Value.list(elements), means, of);
  }

  /** A member that is an object of members that are alike. */
  public <K, V> Shape<A> byName(
      String member,
      Value<V> values,
      String means,
      Function<A, Map<K, V>> of,
      Function<K, String> key) {
    return this.<Map.Entry<K, V>, V>each(
        member,
        values,
        means,
        whole -> of.apply(whole).entrySet(),
        entry -> key.apply(entry.getKey()),
        Map.Entry::getValue);
  }

  /** The same of some things, by their names. */
  public <T> Shape<A> each(
      String member,
      Value<T> values,
      String means,
      Function<A, ? extends Collection<? extends T>> of,
      Function<T, String> key) {
    return each(member, values, means, of, key, it -> it);
  }

  /** The same of what is said of each. */
  public <T, V> Shape<A> each(
      String member,
      Value<V> values,
      String means,
      Function<A, ? extends Collection<? extends T>> of,
      Function<T, String> key,
      Function<T, ? extends V> value) {
    return member(
        member, Value.byName(values), means, whole -> Value.map(of.apply(whole), key, value));
  }

  /** All members of another shape. */
  public <B> Shape<A> including(Shape<B> other, Function<A, B> of) {
    Shape<A> all = this;
    for (Member<B> member : other.members) {
      all =
          all.with(
              new Member<>(
                  member.name,
                  member.value,
                  member.meaning,
                  member.always,
                  (json, whole) -> member.write.accept(json, of.apply(whole))));
    }
    return all;
  }

  private Shape<A> with(Member<A> member) {
    List<Member<A>> more = new ArrayList<>(members);
    more.add(member);
    return new Shape<>(name, meaning, more);
  }

  String name() {
    return name;
  }

  @Override
  public void write(Json json, A value) {
    json.object(() -> members.forEach(member -> member.write.accept(json, value)));
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    if (orNull) {
      definitions.anyOf(schema, List.of(this), true);
    } else if (name.isEmpty()) {
      define(schema, definitions);
    } else {
      definitions.refer(schema, this);
    }
  }

  /** Writes what the schema says of it. */
  void define(Json schema, Definitions definitions) {
    schema.name("type").words("object");
    if (!meaning.isEmpty()) {
      schema.name("description").words(meaning);
    }
    schema
        .name("properties")
        .object(
            () ->
                members.forEach(
                    member ->
                        schema
                            .name(member.name)
                            .object(
                                () -> {
                                  member.value.describe(schema, definitions, false);
                                  schema.name("description").words(member.described());
                                })));
    schema
        .name("required")
        .array(
            () ->
                members.stream()
                    .filter(Member::always)
                    .forEach(member -> schema.words(member.name)));
  }
}
