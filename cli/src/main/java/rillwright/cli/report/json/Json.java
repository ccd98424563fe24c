package rillwright.cli.report.json;

import java.io.StringWriter;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
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
 * A JSON text being written. Numbers are the shortest that read back as the same double; one that
 * is not known is {@code null}; an indent is two spaces and a line ends with a line feed on every
 * system.
 */
public final class Json {
  private final JsonGenerator generator;

  private Json(JsonGenerator generator) {
    this.generator = generator;
  }

  /** The text of one object, with a line feed after it. */
  public static String object(Consumer<Json> members) {
    StringWriter text = new StringWriter();
    JsonFactory factory =
        JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();
    try (JsonGenerator generator = factory.createGenerator(new Indented(), text)) {
      generator.writeStartObject();
      members.accept(new Json(generator));
      generator.writeEndObject();
    }
    return text.append('\n').toString();
  }

  /** A member that is an object. */
  public void object(String name, Runnable members) {
    generator.writeName(name);
    object(members);
  }

  /** An element of an array that is an object. */
  public void object(Runnable members) {
    generator.writeStartObject();
    members.run();
    generator.writeEndObject();
  }

  /** A member that is an array. */
  public void array(String name, Runnable elements) {
    generator.writeName(name);
    generator.writeStartArray();
    elements.run();
    generator.writeEndArray();
  }

  /** A member of words. */
  public void words(String name, String value) {
    generator.writeStringProperty(name, value);
  }

  /** An element of an array of words. */
  public void words(String value) {
    generator.writeString(value);
  }

  /** A member that is an object, or null where there is none. */
  public <T> void objectOrNull(String name, Optional<T> value, Consumer<T> members) {
    if (value.isPresent()) {
      object(name, () -> members.accept(value.get()));
    } else {
      generator.writeNullProperty(name);
    }
  }

  /** A member of words, or null where there are none. */
  public void wordsOrNull(String name, Optional<String> value) {
    if (value.isPresent()) {
      words(name, value.get());
    } else {
      generator.writeNullProperty(name);
    }
  }

  /** A member that is null. */
  public void nothing(String name) {
    generator.writeNullProperty(name);
  }

  /** A member that is true or false. */
  public void truth(String name, boolean value) {
    generator.writeBooleanProperty(name, value);
  }

  /** A whole number. */
  public void whole(String name, long value) {
    generator.writeNumberProperty(name, value);
  }

  /**
   * A number.
   *
   * @throws IllegalArgumentException if it is not finite: JSON has no such number
   */
  public void number(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + "; it must be finite");
    }
    generator.writeNumberProperty(name, value == 0 ? 0.0 : value);
  }

  /** A number, or null where it is not known. */
  public void number(String name, OptionalDouble value) {
    if (value.isPresent()) {
      number(name, value.getAsDouble());
    } else {
      generator.writeNullProperty(name);
    }
  }

  /** An element of an array that is a number, or null where it is not known. */
  public void number(OptionalDouble value) {
    if (value.isPresent()) {
      double known = value.getAsDouble();
      generator.writeNumber(known == 0 ? 0.0 : known);
    } else {
      generator.writeNull();
    }
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
