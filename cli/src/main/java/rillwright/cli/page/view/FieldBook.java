package rillwright.cli.page.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rillwright.cli.schema.FieldRow;
import rillwright.cli.schema.FieldRows;

/** The fields of each kind of thing by the published schema, looked up once. */
public final class FieldBook {
  private final FieldRows rows = FieldRows.published();
  private final List<String> parts = rows.kindsOfParts();

  private final List<String> points =
      rows.of("point").stream()
          .filter(row -> row.name().equals("kind"))
          .flatMap(row -> row.words().stream())
          .toList();

  private final Map<String, List<FieldRow>> byDefinition = new ConcurrentHashMap<>();

  /** The fields of a definition; none if there is no such definition. */
  List<FieldRow> of(String definition) {
    return byDefinition.computeIfAbsent(definition, this::read);
  }

  private List<FieldRow> read(String definition) {
    boolean known =
        definition.isEmpty()
            || definition.equals("line")
            || points.contains(definition)
            || parts.stream().map("part/"::concat).anyMatch(definition::equals);
    return known ? rows.of(definition) : List.of();
  }

  /** A field of a definition, numbers of rows left out of its name. */
  Optional<FieldRow> find(String definition, String field) {
    String plain = field.replaceAll("\\.\\d+", "");
    return of(definition).stream().filter(row -> row.name().equals(plain)).findFirst();
  }

  /** All kinds of parts. */
  List<String> parts() {
    return parts;
  }

  /** All kinds of points. */
  List<String> points() {
    return points;
  }
}
