package rillwright.cli.catalogue.page;

import java.io.PrintWriter;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * The catalogue for programs: one object with an array for each section asked, SI, the same fields
 * in each row of a section.
 */
public final class JsonPage {
  private JsonPage() {}

  /** Prints what was asked. */
  public static void print(Selection selection, PrintWriter out) {
    JsonFactory factory =
        JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();
    try (JsonGenerator json = factory.createGenerator(pretty(), out)) {
      json.writeStartObject();
      selection.sections().forEach(section -> section.write(json));
      json.writeEndObject();
    }
    out.println();
  }

  private static ObjectWriteContext pretty() {
    return new ObjectWriteContext.Base() {
      @Override
      public PrettyPrinter getPrettyPrinter() {
        return new DefaultPrettyPrinter();
      }
    };
  }
}
