package rillwright.cli.page.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rillwright.cli.schema.FieldRow;
import rillwright.cli.schema.FieldRows;

/** The fields of each kind of thing by the published schema, looked up once. */
public final class FieldBook {
  private static final List<String> PARTS =
      List.of(
          "run",
          "fitting",
          "valve",
          "check valve",
          "pump",
          "gauge",
          "high point",
          "filter",
          "skimmer",
          "loss");

  private static final List<String> POINTS = List.of("fall", "tee", "chamber", "basin", "outlet");

  private final Map<String, List<FieldRow>> byDefinition = new ConcurrentHashMap<>();

  /** The fields of a definition; none if there is no such definition. */
  List<FieldRow> of(String definition) {
    return byDefinition.computeIfAbsent(definition, FieldBook::read);
  }

  private static List<FieldRow> read(String definition) {
    boolean known =
        POINTS.contains(definition)
            || definition.equals("line")
            || definition.isEmpty()
            || (definition.startsWith("part/")
                && PARTS.contains(definition.substring("part/".length())));
    return known ? FieldRows.of(definition) : List.of();
  }

  /** A field of a definition, numbers of rows left out of its name. */
  Optional<FieldRow> find(String definition, String field) {
    String plain = field.replaceAll("\\.\\d+", "");
    return of(definition).stream().filter(row -> row.name().equals(plain)).findFirst();
  }

  /** All kinds of parts. */
  static List<String> parts() {
    return PARTS;
  }

  /** All kinds of points. */
  static List<String> points() {
    return POINTS;
  }
}
