package rillwright.cli.catalogue.page;

import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;

/**
 * A named value of a row, for programs: in SI, the same in JSON and CSV.
 *
 * @param <T> what a row stands for
 */
sealed interface Field<T> {
  /** Its name. */
  String key();

  /** An object of a row with this one more member. */
  Shape<T> addTo(Shape<T> row);

  /** The value as a cell; empty if the row has none. */
  String cell(T row);

  /** A field of words. */
  static <T> Field<T> words(String key, String meaning, Function<T, String> value) {
    return new Words<>(key, Value.someWords(), meaning, value);
  }

  /** A field of a number. */
  static <T> Field<T> number(
      String key, Quantity quantity, String meaning, ToDoubleFunction<T> value) {
    return new Measured<>(key, quantity, meaning, value);
  }

  /** Words. */
  record Words<T>(String key, Value<String> kind, String meaning, Function<T, String> value)
      implements Field<T> {
    @Override
    public Shape<T> addTo(Shape<T> row) {
      return row.member(key, kind, meaning, value);
    }

    /** Quoted where a comma or quote would be misread. */
    @Override
    public String cell(T row) {
      String words = value.apply(row);
      boolean plain = words.indexOf(',') < 0 && words.indexOf('"') < 0;
      return plain ? words : '"' + words.replace("\"", "\"\"") + '"';
    }
  }

  /** A number. */
  record Measured<T>(String key, Quantity quantity, String meaning, ToDoubleFunction<T> value)
      implements Field<T> {
    @Override
    public Shape<T> addTo(Shape<T> row) {
      return row.number(key, quantity, meaning, value);
    }

    @Override
    public String cell(T row) {
      return Double.toString(value.applyAsDouble(row));
    }
  }

  /** A number, absent in some rows. */
  record MaybeNumber<T>(
      String key, Quantity quantity, String meaning, Function<T, OptionalDouble> value)
      implements Field<T> {
    @Override
    public Shape<T> addTo(Shape<T> row) {
      return row.numberOrNull(key, quantity, meaning, value);
    }

    @Override
    public String cell(T row) {
      OptionalDouble number = value.apply(row);
      return number.isPresent() ? Double.toString(number.getAsDouble()) : "";
    }
  }
}
