package rillwright.cli.catalogue.page;

import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;

/**
 * The catalogue for programs: one object with an array for each section asked, SI, the same fields
 * in each row of a section.
 */
public final class JsonPage {
  private JsonPage() {}

  /** The JSON text of what was asked. */
  public static String of(Selection selection) {
    return Json.text(shape(selection.sections()), selection);
  }

  /** What any part of a catalogue is written as. */
  public static Shape<Selection> shape(Catalogue catalogue) {
    return shape(Sections.all(catalogue));
  }

  private static Shape<Selection> shape(List<Section<?>> sections) {
    Shape<Selection> shape =
        Shape.answer("catalogue", "What the program knows by name: the sections asked for.");
    for (Section<?> section : sections) {
      shape = section.addTo(shape);
    }
    return shape;
  }
}
