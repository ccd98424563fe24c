package rillwright.cli.file.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.change.Change;
import rillwright.cli.file.fault.FaultList;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;

/** Reads the section {@code conditions} of a file. */
final class NamedConditions {
  private NamedConditions() {}

  /**
   * The conditions that a file names, in their order; none without the section.
   *
   * @param file as the user named it
   * @throws rillwright.cli.file.fault.InvalidInput if they are not names with changes
   */
  static List<Condition> in(MapNode tree, String file) {
    Optional<Entry> section = tree.find("conditions");
    if (section.isEmpty()) {
      return List.of();
    }
    FaultList faults = new FaultList(file);
    List<Condition> conditions = new ArrayList<>();
    if (section.get().value() instanceof MapNode named) {
      for (Entry entry : named.entries()) {
        if (entry.key().equals(Condition.AS_WRITTEN.name())) {
          faults.add(
              entry.keyPlace(),
              "condition \""
                  + entry.key()
                  + "\": this name stands for the file without changes; give the condition another"
                  + " name");
        }
        if (entry.value() instanceof MapNode changes) {
          conditions.add(new Condition(entry.key(), Change.listIn(changes)));
        } else {
          faults.add(
              entry.value().place(),
              "condition \""
                  + entry.key()
                  + "\": expected changes such as {lines: {intake: {skimmer: {clogged: 40 %}}}},"
                  + " found "
                  + entry.value().words());
        }
      }
    } else {
      faults.add(
          section.get().value().place(),
          "conditions: expected names with their changes, such as \"autumn: {lines: {intake:"
              + " {skimmer: {clogged: 40 %}}}}\", found "
              + section.get().value().words());
    }
    faults.throwIfAny();
    return conditions;
  }
}
