package rillwright.cli.file.change;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;

/**
 * Changes values of a project's tree. A part is addressed by its line and kind, the second of a
 * kind in a line as {@code valve 2}.
 */
public final class Changes {
  private static final Pattern FIELDS = Pattern.compile("\\{\\s*([^:,{}]+):\\s*([^:,{}]+)[,}].*");

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
    requireOneValue(assignment, place);
    Scalar value = new Scalar(assignment.value(), Scalar.Form.TEXT, place);
    return new Change(assignment.address(), value).in(tree);
  }

  /** How many of some changes stand before the first that adds a second line; all without one. */
  public static int beforeASecondLine(List<String> changes) {
    return (int)
        changes.stream()
            .takeWhile(
                change -> !SecondLine.isMeantBy(Address.parse(change, Place.whole("")).address()))
            .count();
  }

  private static void requireOneValue(Address.Assignment assignment, Place place) {
    String value = assignment.value();
    if (value.startsWith("[") && value.endsWith("]")) {
      throw new InvalidInput(
          place, "a list is set in the file; a change sets one value: 40 %, ball, 3 in");
    }
    if (value.startsWith("{") && value.endsWith("}")) {
      Matcher fields = FIELDS.matcher(value);
      String example =
          fields.matches()
              ? fields.group(1).strip() + "=" + fields.group(2).strip()
              : "FIELD=VALUE";
      throw new InvalidInput(
          place,
          "a change sets one value, not several fields; for example \""
              + assignment.address().text()
              + "."
              + example
              + "\"");
    }
  }

  /**
   * The tree with the values changed that nested maps name: {@code lines: {intake: {skimmer:
   * {clogged: 40 %}}}}.
   *
   * @throws InvalidInput if nothing has one of the addresses
   */
  public static MapNode applyAll(MapNode tree, MapNode changes) {
    MapNode changed = tree;
    for (Change change : Change.listIn(changes)) {
      changed = change.in(changed);
    }
    return changed;
  }
}
