package rillwright.cli.page.html;

import static org.apache.commons.text.StringEscapeUtils.escapeXml10;

import java.util.ArrayDeque;
import java.util.Deque;
import rillwright.curves.wording.PlainText;

/**
 * Writes HTML from the outside in. Texts and values of attributes are escaped and harmless whatever
 * stands in them; names of elements and attributes are the program's own.
 */
public final class Html {
  private final StringBuilder html = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param attributes names and values in turns; one with an empty name is left out
   */
  public Html open(String element, String... attributes) {
    begin(element, attributes);
    open.push(element);
    return this;
  }

  private void begin(String element, String... attributes) {
    html.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      if (!attributes[i].isEmpty()) {
        html.append(' ').append(attributes[i]).append("=\"");
        html.append(escapeXml10(valueOf(attributes[i], attributes[i + 1]))).append('"');
      }
    }
    html.append('>');
  }

  /** What comes back to the program must come back as it is; all else is for people. */
  private static String valueOf(String attribute, String value) {
    return attribute.equals("value") || attribute.startsWith("data-")
        ? value
        : PlainText.harmless(value);
  }

  /** Closes the element that was opened last. */
  public Html close() {
    html.append("</").append(open.pop()).append(">\n");
    return this;
  }

  /** An element without content. */
  public Html empty(String element, String... attributes) {
    begin(element, attributes);
    return this;
  }

  /** An element with text in it. */
  public Html leaf(String element, String text, String... attributes) {
    begin(element, attributes);
    text(text);
    html.append("</").append(element).append('>');
    return this;
  }

  /** A text. */
  public Html text(String text) {
    html.append(escapeXml10(PlainText.harmless(text)));
    return this;
  }

  /**
   * Ways past what comes first, seen when keys reach them.
   *
   * @param ways the words of each, then the name of the piece that it leads to
   */
  public Html skips(String... ways) {
    open("nav", "class", "skips", "aria-label", "Skip to");
    for (int i = 0; i < ways.length; i += 2) {
      leaf("a", ways[i], "href", "#" + ways[i + 1], "id", "skip-to-" + ways[i + 1]);
    }
    return close();
  }

  /** HTML that was made with care elsewhere. */
  public Html made(String made) {
    html.append(made);
    return this;
  }

  /** What was written; every element must be closed. */
  public String done() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not closed: " + open);
    }
    return html.toString();
  }
}
