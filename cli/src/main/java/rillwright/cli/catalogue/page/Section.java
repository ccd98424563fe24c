package rillwright.cli.catalogue.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;

/**
 * A kind of things in the catalogue: {@code pipes}, {@code check valves}.
 *
 * @param name as users ask for it
 * @param key its name in JSON
 * @param about one line that says what its numbers are
 * @param rows what it holds
 * @param names exact names by which a row may be asked for, the main one first
 * @param columns what people read
 * @param fields what programs read
 * @param source where a row is from
 * @param <T> what a row stands for
 */
record Section<T>(
    String name,
    String key,
    String about,
    List<T> rows,
    Function<T, List<String>> names,
    List<Column<T>> columns,
    List<Field<T>> fields,
    Function<T, String> source) {
  Section {
    rows = List.copyOf(rows);
    columns = List.copyOf(columns);
    fields = List.copyOf(fields);
  }

  /** Its name, and what its numbers are. */
  String title() {
    return name + ": " + about;
  }

  /** Only the rows of exactly this name. */
  Section<T> named(String asked) {
    return only(row -> names.apply(row).stream().anyMatch(name -> name.equalsIgnoreCase(asked)));
  }

  /** Only the rows whose names, with that of the section, hold all words asked. */
  Section<T> mentioning(String asked) {
    List<String> words = words(asked);
    return only(row -> wordsOf(row).containsAll(words));
  }

  private List<String> wordsOf(T row) {
    List<String> own = new ArrayList<>(words(name));
    own.addAll(words(singular()));
    names.apply(row).forEach(each -> own.addAll(words(each)));
    return own;
  }

  /** {@code pipe} for {@code pipes}. */
  String singular() {
    return name.substring(0, name.length() - 1);
  }

  private static List<String> words(String text) {
    return List.of(text.strip().toLowerCase(Locale.ROOT).split("\\s+"));
  }

  private Section<T> only(Predicate<T> wanted) {
    List<T> kept = rows.stream().filter(wanted).toList();
    return new Section<>(name, key, about, kept, names, columns, fields, source);
  }

  /** All exact names. */
  List<String> allNames() {
    return rows.stream().flatMap(row -> names.apply(row).stream()).distinct().toList();
  }

  /** The first name of each row: of pipes their materials. */
  List<String> mainNames() {
    return rows.stream().map(row -> names.apply(row).get(0)).distinct().toList();
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The rows' cells for people, with the number of its source's note at the end of each. */
  List<List<String>> cells(Notes notes) {
    List<List<String>> table = new ArrayList<>();
    for (T row : rows) {
      List<String> cells = new ArrayList<>();
      columns.forEach(column -> cells.add(column.cell().apply(row)));
      cells.add(Integer.toString(notes.numberOf(source.apply(row))));
      table.add(cells);
    }
    return table;
  }

  /** An answer with the rows under the section's key as one more member. */
  Shape<Selection> addTo(Shape<Selection> answer) {
    Shape<T> row = Shape.of();
    for (Field<T> field : allFields()) {
      row = field.addTo(row);
    }
    return answer.ifAny(key, Value.someOf(row), about, any -> Optional.of(rows));
  }

  /** Lines of comma-separated cells, the first of which names the columns. */
  List<String> csvLines() {
    List<String> lines = new ArrayList<>();
    lines.add(String.join(",", allFields().stream().map(Field::key).toList()));
    rows.forEach(
        row ->
            lines.add(String.join(",", allFields().stream().map(each -> each.cell(row)).toList())));
    return lines;
  }

  private List<Field<T>> allFields() {
    List<Field<T>> all = new ArrayList<>(fields);
    all.add(Field.words("source", "Where the numbers are from.", source));
    return all;
  }
}
