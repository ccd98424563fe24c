package rillwright.cli.file.outline;

import rillwright.cli.file.field.Fields;
import rillwright.cli.file.point.PointTable;
import rillwright.curves.wording.PlainText;

/** Checks names of points. */
public final class PointNames {
  private PointNames() {}

  /** Notes if a field is missing or names no point of the file. */
  public static void require(Fields fields, String field, PointTable points) {
    fields
        .requireText(field, "pond")
        .filter(name -> !points.has(name))
        .ifPresent(
            name ->
                fields.unknown(
                    field, "there is no point " + PlainText.quoted(name), name, points.names()));
  }
}
