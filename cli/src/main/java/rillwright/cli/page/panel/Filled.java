package rillwright.cli.page.panel;

import java.util.LinkedHashMap;
import java.util.Map;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;

/**
 * What was filled into a panel's form.
 *
 * @param fields by their names; copied
 */
public record Filled(Map<String, String> fields) {
  public Filled {
    fields = Map.copyOf(fields);
  }

  /** A text; empty if nothing was written. */
  public String text(String field) {
    return fields.getOrDefault(field, "").strip();
  }

  /** Whether a box is ticked. */
  public boolean isTicked(String field) {
    return fields.containsKey(field);
  }

  /**
   * A whole number.
   *
   * @throws InvalidInput if it is none, or not between these
   */
  public int number(String field, int least, int most, int usual) {
    String text = text(field);
    if (text.isEmpty()) {
      return usual;
    }
    int number = text.matches("\\d{1,7}") ? Integer.parseInt(text) : least - 1;
    if (number < least || number > most) {
      throw new InvalidInput(
          Place.whole(field), field + ": this must be a whole number of " + least + " to " + most);
    }
    return number;
  }

  /** Texts of all fields whose names begin so, by the rest of their names. */
  public Map<String, String> allOf(String beginning) {
    Map<String, String> found = new LinkedHashMap<>();
    fields.forEach(
        (name, text) -> {
          if (name.startsWith(beginning)) {
            found.put(name.substring(beginning.length()), text);
          }
        });
    return found;
  }
}
