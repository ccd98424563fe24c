package rillwright.cli.catalogue.page;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import tools.jackson.core.JsonGenerator;

/**
 * A named value of a row, for programs: in SI, the same in JSON and CSV.
 *
 * @param <T> what a row stands for
 */
sealed interface Field<T> {
  /** Its name. */
  String key();

  /** Writes name and value. */
  void write(T row, JsonGenerator json);

  /** The value as a cell; empty if the row has none. */
  String cell(T row);

  /** A field of words. */
  static <T> Field<T> words(String key, Function<T, String> value) {
    return new Words<>(key, value.andThen(Optional::of));
  }

  /** A field of a number. */
  static <T> Field<T> number(String key, ToDoubleFunction<T> value) {
    return new Quantity<>(key, row -> OptionalDouble.of(value.applyAsDouble(row)));
  }

  /** Words, absent in some rows. */
  record Words<T>(String key, Function<T, Optional<String>> value) implements Field<T> {
    @Override
    public void write(T row, JsonGenerator json) {
      json.writeStringProperty(key, value.apply(row).orElse(null));
    }

    /** Quoted where a comma or quote would be misread. */
    @Override
    public String cell(T row) {
      String words = value.apply(row).orElse("");
      boolean plain = words.indexOf(',') < 0 && words.indexOf('"') < 0;
      return plain ? words : '"' + words.replace("\"", "\"\"") + '"';
    }
  }

  /** A number, absent in some rows. */
  record Quantity<T>(String key, Function<T, OptionalDouble> value) implements Field<T> {
    @Override
    public void write(T row, JsonGenerator json) {
      OptionalDouble number = value.apply(row);
      if (number.isPresent()) {
        json.writeNumberProperty(key, number.getAsDouble());
      } else {
        json.writeNullProperty(key);
      }
    }

    @Override
    public String cell(T row) {
      OptionalDouble number = value.apply(row);
      return number.isPresent() ? Double.toString(number.getAsDouble()) : "";
    }
  }
}
