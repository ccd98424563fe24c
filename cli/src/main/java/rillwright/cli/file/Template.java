package rillwright.cli.file;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What a piece of the file reads as, with places for drawn values: found by comparing what it reads
 * as with several sets of them, so that it need not be read again with others.
 */
sealed interface Template {
  /** What the piece reads as with values. */
  Object with(List<Double> values);

  /** Reads alike whatever is drawn. */
  record Fixed(Object value) implements Template {
    @Override
    public Object with(List<Double> values) {
      return value;
    }
  }

  /** Is a drawn value itself. */
  record Drawn(int index) implements Template {
    @Override
    public Object with(List<Double> values) {
      return values.get(index);
    }
  }

  /** Is put together. */
  record Composed(Function<Object[], Object> maker, List<Template> parts) implements Template {
    @Override
    public Object with(List<Double> values) {
      Object[] made = new Object[parts.size()];
      for (int i = 0; i < made.length; i++) {
        made[i] = parts.get(i).with(values);
      }
      return maker.apply(made);
    }
  }

  /**
   * The template of a piece.
   *
   * @param readings what it reads as with each of several sets of values
   * @param values these sets, in which no two values are everywhere the same
   * @return empty if something in it is neither always the same nor a drawn value as it is
   */
  static Optional<Template> of(List<?> readings, List<List<Double>> values) {
    Object first = readings.get(0);
    if (readings.stream().allMatch(first::equals)) {
      return Optional.of(new Fixed(first));
    }
    if (first instanceof Double) {
      return IntStream.range(0, values.get(0).size())
          .filter(index -> readings.equals(values.stream().map(set -> set.get(index)).toList()))
          .<Template>mapToObj(Drawn::new)
          .findFirst();
    }
    List<Anatomy> taken = readings.stream().map(Anatomy::of).toList();
    Anatomy whole = taken.get(0);
    List<Template> parts = new ArrayList<>();
    for (int i = 0; i < whole.parts.size(); i++) {
      int place = i;
      if (!taken.stream().allMatch(whole::isLike)) {
        return Optional.empty();
      }
      Optional<Template> part =
          of(taken.stream().map(one -> one.parts.get(place)).toList(), values);
      if (part.isEmpty()) {
        return Optional.empty();
      }
      parts.add(part.get());
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(new Composed(whole.maker, parts));
  }

  /**
   * How something is put together.
   *
   * @param kind its class
   * @param parts none of what is not put together
   * @param maker puts the like together of other parts
   */
  record Anatomy(Class<?> kind, List<?> parts, Function<Object[], Object> maker) {
    private static Anatomy of(Object whole) {
      if (whole instanceof Record) {
        return ofRecord(whole);
      }
      if (whole instanceof List<?> list) {
        return new Anatomy(List.class, list, List::of);
      }
      if (whole instanceof Optional<?> present && present.isPresent()) {
        return new Anatomy(Optional.class, List.of(present.get()), made -> Optional.of(made[0]));
      }
      if (whole instanceof OptionalDouble present && present.isPresent()) {
        return new Anatomy(
            OptionalDouble.class,
            List.of(present.getAsDouble()),
            made -> OptionalDouble.of((Double) made[0]));
      }
      return new Anatomy(whole.getClass(), List.of(), made -> whole);
    }

    private static Anatomy ofRecord(Object whole) {
      RecordComponent[] components = whole.getClass().getRecordComponents();
      try {
        Constructor<?> constructor =
            whole
                .getClass()
                .getDeclaredConstructor(
                    Arrays.stream(components)
                        .map(RecordComponent::getType)
                        .toArray(Class<?>[]::new));
        List<Object> parts = new ArrayList<>();
        for (RecordComponent component : components) {
          parts.add(component.getAccessor().invoke(whole));
        }
        return new Anatomy(whole.getClass(), parts, made -> make(constructor, made));
      } catch (ReflectiveOperationException hidden) {
        return new Anatomy(whole.getClass(), List.of(), made -> whole);
      }
    }

    private static Object make(Constructor<?> record, Object[] made) {
      try {
        return record.newInstance(made);
      } catch (InvocationTargetException e) {
        throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }

    private boolean isLike(Anatomy other) {
      return kind == other.kind && parts.size() == other.parts.size();
    }
  }
}
