package rillwright.cli.file.edit;

import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;
import rillwright.curves.wording.PlainText;

/** A piece of a project that is yet to be put into its text. */
final class Snippet {
  private static final String NAME = "x";

  private Snippet() {}

  /** A map in braces, a list in brackets, or a value of any text. */
  static Node value(String written) {
    Place place = place(written);
    String text = written.strip();
    if (!text.startsWith("{") && !text.startsWith("[")) {
      return new Scalar(text, Scalar.Form.TEXT, place);
    }
    return read("{" + NAME + ": " + text + "}", written);
  }

  /** A part, {@code run: 38 ft}, or what {@link #value} reads. */
  static Node item(String written) {
    String text = written.strip();
    boolean isPart = !text.startsWith("{") && text.contains(":");
    Node list = read("{" + NAME + ": [" + (isPart ? "{" + text + "}" : text) + "]}", written);
    if (list instanceof ListNode items && items.items().size() == 1) {
      return items.items().get(0);
    }
    throw unreadable(written);
  }

  private static Node read(String text, String written) {
    try {
      MapNode read = TreeReader.read(new SourceText(NAME + ".yaml", text));
      return read.findNode(NAME).orElseThrow(() -> unreadable(written));
    } catch (InvalidInput otherwise) {
      throw unreadable(written);
    }
  }

  private static Place place(String written) {
    return Place.whole("new " + PlainText.quoted(written));
  }

  private static InvalidInput unreadable(String written) {
    return new InvalidInput(
        place(written),
        "this cannot be read; write fields in braces, for example {type: ball, open: 100 %}");
  }
}
