package rillwright.cli.file.change;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/**
 * Changes values of a project's tree. A part is addressed by its line and kind, the second of a
 * kind in a line as {@code valve 2}.
 */
public final class Changes {
  private Changes() {}

  /**
   * The tree with one value changed.
   *
   * @param change {@code lines.intake.skimmer.clogged=40 %}
   * @throws InvalidInput if it cannot be read or nothing has that address
   */
  public static MapNode apply(MapNode tree, String change) {
    Place place = Place.whole("--set \"" + change + "\"");
    Address.Assignment assignment = Address.parse(change, place);
    Scalar value = new Scalar(assignment.value(), Scalar.Form.TEXT, place);
    return set(tree, assignment.address(), value);
  }

  /**
   * The tree with the values changed that nested maps name: {@code lines: {intake: {skimmer:
   * {clogged: 40 %}}}}.
   *
   * @throws InvalidInput if nothing has one of the addresses
   */
  public static MapNode applyAll(MapNode tree, MapNode changes) {
    return applyBelow(tree, changes, List.of());
  }

  private static MapNode applyBelow(MapNode tree, MapNode changes, List<String> above) {
    MapNode changed = tree;
    for (Entry entry : changes.entries()) {
      List<String> steps = new ArrayList<>(above);
      steps.add(entry.key());
      changed =
          entry.value() instanceof MapNode below
              ? applyBelow(changed, below, steps)
              : set(changed, new Address(steps), entry.value());
    }
    return changed;
  }

  private static MapNode set(MapNode tree, Address address, Node value) {
    return new Placement(address, value).in(tree);
  }
}
