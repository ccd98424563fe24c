package rillwright.cli.page.view;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A point, a line, a part or a section of a job.
 *
 * @param kind what it is
 * @param address of it, as {@code --set} takes it
 * @param name of a point or line; the kind of a part with its number; of a section its name
 * @param definition its name in the schema: {@code fall}, {@code part/valve}
 * @param position of a part in its line, from 1; 0 for others
 * @param values that it has, in their order; copied
 * @param parts of a line; copied
 */
record Item(
    Kind kind,
    String address,
    String name,
    String definition,
    int position,
    List<Value> values,
    List<Item> parts) {
  private static final int SHOWN = 3;

  Item {
    values = List.copyOf(values);
    parts = List.copyOf(parts);
  }

  /** What it is. */
  enum Kind {
    POINT,
    LINE,
    PART,
    SECTION
  }

  /** What it says, shortly. */
  String summary() {
    String said =
        values.stream()
            .filter(value -> !value.field().equals("kind"))
            .limit(SHOWN)
            .map(value -> (value.field().equals(name) ? "" : named(value)) + value.text())
            .collect(Collectors.joining(", "));
    return kind == Kind.POINT ? definition + (said.isEmpty() ? "" : ", " + said) : said;
  }

  private static String named(Value value) {
    String last = value.field().substring(value.field().lastIndexOf('.') + 1);
    return switch (last) {
      case "type", "model", "length", "material", "size", "from", "name" -> "";
      case "to" -> "to ";
      default -> last + " ";
    };
  }
}
