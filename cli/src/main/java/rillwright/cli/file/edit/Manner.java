package rillwright.cli.file.edit;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.file.edit.Quoting.Around;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.Span;

/**
 * How a file is written, so that what is new is written likewise.
 *
 * @param isJson whether it is JSON
 * @param lineBreak of its lines
 * @param indent by how many characters lines stand further right than what they belong to
 * @param dashIndent by how many characters dashes do
 */
record Manner(boolean isJson, String lineBreak, int indent, int dashIndent) {
  private static final int WIDEST = 100;
  private static final int USUAL = 2;

  /** That of a text. */
  static Manner of(SourceText source, Span whole) {
    String text = source.text();
    int lineFeed = text.indexOf('\n');
    int carriage = text.indexOf('\r');
    String lineBreak =
        carriage < 0 || (lineFeed >= 0 && lineFeed < carriage)
            ? "\n"
            : lineFeed == carriage + 1 ? "\r\n" : "\r";
    int indent = further(text, whole, true);
    int dash = further(text, whole, false);
    return new Manner(
        source.isJson(), lineBreak, indent < 0 ? USUAL : indent, dash < 0 ? USUAL : dash);
  }

  /** How much further right the first map, or list, on lines of its own stands; -1 without one. */
  private static int further(String text, Span span, boolean isMap) {
    for (int i = 0; i < span.pieces().size(); i++) {
      Span piece = span.pieces().get(i);
      if (!span.keys().isEmpty() && piece.isBlock() && piece.keys().isEmpty() != isMap) {
        return column(text, piece.start()) - column(text, span.keys().get(i).start());
      }
      int found = further(text, piece, isMap);
      if (found >= 0) {
        return found;
      }
    }
    return -1;
  }

  private static int column(String text, int index) {
    int lineBreak = Math.max(text.lastIndexOf('\n', index - 1), text.lastIndexOf('\r', index - 1));
    return index - 1 - lineBreak;
  }

  /** A name. */
  String name(String name, boolean onLine) {
    return isJson
        ? Quoting.json(name)
        : Quoting.yaml(name, onLine ? Around.NAME : Around.NAME_IN_BRACES);
  }

  /**
   * A name with what belongs to it.
   *
   * @param onLine whether it stands on a line of its own, not in braces
   * @param column how many characters stand before it on its line
   */
  String entry(Entry entry, boolean onLine, int column) {
    String name = name(entry.key(), onLine);
    return onLine && takesLines(entry.value())
        ? name + ":" + lines(entry.value(), column)
        : name + ": " + value(entry.value(), onLine, false);
  }

  /** An item of a list, with its dash if it is on a line of its own. */
  String item(Node item, boolean onLine) {
    return onLine ? "- " + value(item, true, true) : inBrackets(item);
  }

  /**
   * A value on one line.
   *
   * @param onLine whether it stands in no brackets
   * @param isItem whether it stands behind a dash or between commas, else behind a name
   */
  String value(Node node, boolean onLine, boolean isItem) {
    if (node instanceof Scalar scalar) {
      Around around =
          onLine ? isItem ? Around.DASH : Around.LINE : isItem ? Around.BRACKETS : Around.BRACES;
      return scalar(scalar, around);
    }
    if (node instanceof MapNode map && onLine && isItem && map.entries().size() == 1) {
      Entry only = map.entries().get(0);
      return name(only.key(), true) + ": " + value(only.value(), true, false);
    }
    return inBrackets(node);
  }

  /** A piece in brackets, or a value between them. */
  String inBrackets(Node node) {
    if (node instanceof MapNode map) {
      return map.entries().stream()
          .map(entry -> entry(entry, false, 0))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof ListNode list) {
      return list.items().stream()
          .map(this::inBrackets)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return scalar((Scalar) node, Around.BRACKETS);
  }

  private String scalar(Scalar scalar, Around around) {
    if (scalar.isNothing()) {
      return "null";
    }
    boolean isBare = scalar.form() == Scalar.Form.NUMBER || scalar.form() == Scalar.Form.TRUTH;
    if (isJson) {
      return isBare ? scalar.text() : Quoting.json(scalar.text());
    }
    return Quoting.yaml(scalar.text(), around);
  }

  /** Whether a piece is too long for one line, or a list of things with fields of their own. */
  boolean takesLines(Node node) {
    if (isJson || node instanceof Scalar) {
      return false;
    }
    List<Node> below =
        node instanceof MapNode map
            ? map.entries().stream().map(Entry::value).toList()
            : ((ListNode) node).items();
    boolean isListOfMaps =
        node instanceof ListNode && below.stream().anyMatch(MapNode.class::isInstance);
    boolean holdsOne = node instanceof MapNode && below.stream().anyMatch(this::takesLines);
    return !below.isEmpty() && (isListOfMaps || holdsOne || inBrackets(node).length() > WIDEST);
  }

  /**
   * A map or list on lines of its own, each with the line's break before it.
   *
   * @param column of the name that it belongs to
   */
  String lines(Node node, int column) {
    StringBuilder written = new StringBuilder();
    if (node instanceof MapNode map) {
      int at = column + indent;
      map.entries().forEach(entry -> written.append(fresh(at)).append(entry(entry, true, at)));
    } else if (node instanceof ListNode list) {
      int at = column + dashIndent;
      list.items().forEach(item -> written.append(fresh(at)).append(item(item, true)));
    }
    return written.toString();
  }

  private String fresh(int column) {
    return lineBreak + " ".repeat(column);
  }
}
