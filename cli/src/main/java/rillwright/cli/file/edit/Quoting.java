package rillwright.cli.file.edit;

import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

/** Quotes around a text where it would else be read as something else. */
public final class Quoting {
  private static final String SAMPLE = "sample.yaml";

  private Quoting() {}

  /** What stands around a text. */
  enum Around {
    /** A value behind a name, on a line. */
    LINE("k: %s\n"),
    /** An item behind a dash. */
    DASH("k:\n- %s\n"),
    /** A value behind a name, in braces. */
    BRACES("k: {k: %s, l: 1}"),
    /** An item in brackets. */
    BRACKETS("k: [%s, 1]"),
    /** A name at the beginning of a line. */
    NAME("%s: 1\n"),
    /** A name in braces. */
    NAME_IN_BRACES("{%s: 1, l: 1}");

    private final String sample;

    Around(String sample) {
      this.sample = sample;
    }

    private String with(String text) {
      return sample.replace("%s", text);
    }
  }

  /** The text for YAML, in quotes only if it must be. */
  static String yaml(String text, Around around) {
    if (isReadAs(text, text, around)) {
      return text;
    }
    String single = "'" + text.replace("'", "''") + "'";
    return isReadAs(single, text, around) ? single : json(text);
  }

  private static boolean isReadAs(String written, String text, Around around) {
    try {
      String sample = around.with(written);
      Node read = TreeReader.read(new SourceText(SAMPLE, sample));
      return switch (around) {
        case LINE -> isText(valueIn(read), text);
        case BRACES -> isText(valueIn(valueIn(read)), text);
        case DASH, BRACKETS ->
            valueIn(read) instanceof ListNode list && isText(list.items().get(0), text);
        case NAME, NAME_IN_BRACES ->
            read instanceof MapNode map && map.entries().get(0).key().equals(text);
      };
    } catch (InvalidInput otherwise) {
      return false;
    }
  }

  private static Node valueIn(Node node) {
    return node instanceof MapNode map && !map.entries().isEmpty()
        ? map.findNode("k").orElse(node)
        : node;
  }

  private static boolean isText(Node node, String text) {
    return node instanceof Scalar scalar && !scalar.isNothing() && scalar.text().equals(text);
  }

  /** The text in double quotes, for JSON and YAML. */
  public static String json(String text) {
    StringBuilder written = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char character = text.charAt(i);
      if (character == '"' || character == '\\') {
        written.append('\\').append(character);
      } else if (character < ' ' || character == 0x7f || Character.isISOControl(character)) {
        written.append(String.format("\\u%04x", (int) character));
      } else {
        written.append(character);
      }
    }
    return written.append('"').toString();
  }
}
