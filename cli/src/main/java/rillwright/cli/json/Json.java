package rillwright.cli.json;

import java.io.StringWriter;
import java.util.Locale;
import java.util.function.Consumer;
import rillwright.curves.wording.PlainText;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.core.util.Separators.Spacing;

/**
 * A JSON text being written. Numbers are the shortest that read back as the same double; an indent
 * is two spaces and a line ends with a line feed on every system.
 */
public final class Json {
  /** The first character that JSON itself leaves as it is and a terminal does not. */
  private static final int DELETE = 0x7f;

  private final JsonGenerator generator;

  private Json(JsonGenerator generator) {
    this.generator = generator;
  }

  /** The text of one value, with a line feed after it. */
  public static <T> String text(Value<T> kind, T value) {
    return text(json -> kind.write(json, value));
  }

  static String text(Consumer<Json> written) {
    StringWriter text = new StringWriter();
    JsonFactory factory =
        JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();
    try (JsonGenerator generator = factory.createGenerator(new Indented(), text)) {
      written.accept(new Json(generator));
    }
    return harmless(text.append('\n').toString());
  }

  /** The text with what could turn the direction of a line, or end it, written as JSON can. */
  private static String harmless(String json) {
    StringBuilder harmless = new StringBuilder(json.length());
    int kept = 0;
    for (int i = 0; i < json.length(); i++) {
      if (json.charAt(i) >= DELETE) {
        int end = json.offsetByCodePoints(i, 1);
        String character = json.substring(i, end);
        if (!PlainText.harmless(character).equals(character)) {
          harmless.append(json, kept, i);
          character
              .chars()
              .forEach(it -> harmless.append(String.format(Locale.ROOT, "\\u%04x", it)));
          kept = end;
        }
        i = end - 1;
      }
    }
    harmless.append(json, kept, json.length());
    return harmless.toString();
  }

  /** An object. */
  void object(Runnable members) {
    generator.writeStartObject();
    members.run();
    generator.writeEndObject();
  }

  /** An array. */
  void array(Runnable elements) {
    generator.writeStartArray();
    elements.run();
    generator.writeEndArray();
  }

  /** The name of a member, its value to follow. */
  Json name(String name) {
    generator.writeName(name);
    return this;
  }

  void words(String value) {
    generator.writeString(value);
  }

  void truth(boolean value) {
    generator.writeBoolean(value);
  }

  void whole(long value) {
    generator.writeNumber(value);
  }

  /**
   * A number.
   *
   * @throws IllegalArgumentException if it is not finite: JSON has no such number
   */
  void number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a number is " + value + "; it must be finite");
    }
    generator.writeNumber(value == 0 ? 0.0 : value);
  }

  void nothing() {
    generator.writeNull();
  }

  private static final class Indented extends ObjectWriteContext.Base {
    @Override
    public PrettyPrinter getPrettyPrinter() {
      DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
      Separators separators =
          Separators.createDefaultInstance().withObjectNameValueSpacing(Spacing.AFTER);
      return new DefaultPrettyPrinter(separators)
          .withObjectIndenter(indenter)
          .withArrayIndenter(indenter);
    }
  }
}
