package rillwright.cli.page.panel.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.need.EachCondition;

/**
 * What was filled into a panel's form.
 *
 * @param fields by their names; copied
 */
public record Filled(Map<String, String> fields) {
  static final String CONDITIONS = "conditions";

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

  /**
   * The conditions in which it is asked, none named for all; empty if it is asked as written.
   *
   * @param fit refuses a project that does not fit in one of them
   */
  public Optional<List<String>> inConditions(Project project, Consumer<Project> fit) {
    if (!isTicked(CONDITIONS)) {
      return Optional.empty();
    }
    EachCondition.require(project, List.of(), fit);
    return Optional.of(List.of());
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
