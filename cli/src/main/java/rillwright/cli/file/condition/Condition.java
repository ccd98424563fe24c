package rillwright.cli.file.condition;

import java.util.List;
import rillwright.cli.file.change.Change;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.MapNode;
import rillwright.curves.wording.PlainText;

/**
 * A state of the site in which a project is looked at.
 *
 * @param name by which people know it: "autumn"
 * @param changes to the file that make it
 */
public record Condition(String name, List<Change> changes) {
  /** The file as it is. */
  public static final Condition AS_WRITTEN = new Condition("as written", List.of());

  public Condition {
    changes = List.copyOf(changes);
  }

  /** What is wrong with a project in this condition, with its name. */
  public InvalidInput tell(InvalidInput wrong) {
    if (changes.isEmpty()) {
      return wrong;
    }
    String beginning = "condition " + PlainText.quoted(name) + ": ";
    return new InvalidInput(
        wrong.faults().stream()
            .map(it -> new Fault(it.file(), it.line(), it.column(), beginning + it.message()))
            .toList());
  }

  /**
   * The file's tree in this condition.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if nothing has the address of a change
   */
  MapNode of(MapNode tree) {
    MapNode changed = tree;
    for (Change change : changes) {
      changed = change.in(changed);
    }
    return changed;
  }
}
