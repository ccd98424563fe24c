package rillwright.cli.file.tree;

import rillwright.cli.file.fault.Place;
import rillwright.curves.wording.PlainText;

/**
 * A single value.
 *
 * @param text as written, without quotes
 * @param form what the file's own notation says that it is
 * @param place where it begins
 */
public record Scalar(String text, Form form, Place place) implements Node {

  /** What a value is by the notation of YAML or JSON. */
  public enum Form {
    TEXT,
    NUMBER,
    TRUTH,
    /** No value at all. */
    NOTHING
  }

  /** Whether nothing is written where a value belongs. */
  public boolean isNothing() {
    return form == Form.NOTHING;
  }

  @Override
  public String words() {
    return isNothing() ? "nothing" : PlainText.quoted(text);
  }
}
