package rillwright.cli.catalogue.page;

import java.util.function.Function;

/**
 * A column of a table that people read.
 *
 * @param heading its heading
 * @param numeric whether it lines up on the right
 * @param cell what stands in it
 * @param <T> what a row stands for
 */
record Column<T>(String heading, boolean numeric, Function<T, String> cell) {

  static <T> Column<T> words(String heading, Function<T, String> cell) {
    return new Column<>(heading, false, cell);
  }

  static <T> Column<T> number(String heading, Function<T, String> cell) {
    return new Column<>(heading, true, cell);
  }
}
