package rillwright.cli.file.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;

/** One value of a project to be changed. */
public final class Change {
  private final Address address;
  private final Node value;
  private final List<Place> places;

  /**
   * A change.
   *
   * @param places where each step of the address is written
   */
  private Change(Address address, Node value, List<Place> places) {
    this.address = address;
    this.value = value;
    this.places = List.copyOf(places);
  }

  /** A change that is written as a whole where its value is. */
  Change(Address address, Node value) {
    this(address, value, Collections.nCopies(address.steps().size(), value.place()));
  }

  /**
   * A change to a value.
   *
   * @param steps names from the file's first level down to the value
   * @param value as it would be written
   * @param source what it is a change of, for messages about it
   */
  public static Change of(List<String> steps, String value, String source) {
    Scalar written = new Scalar(value, Scalar.Form.TEXT, Place.whole(source));
    return new Change(new Address(steps), written);
  }

  /** The changes that nested maps name, in their order. */
  public static List<Change> listIn(MapNode changes) {
    List<Change> found = new ArrayList<>();
    collect(changes, List.of(), List.of(), found);
    return found;
  }

  private static void collect(
      MapNode changes, List<String> above, List<Place> placesAbove, List<Change> found) {
    for (Entry entry : changes.entries()) {
      List<String> steps = longer(above, entry.key());
      List<Place> places = longer(placesAbove, entry.keyPlace());
      if (entry.value() instanceof MapNode below) {
        collect(below, steps, places, found);
      } else {
        found.add(new Change(new Address(steps), entry.value(), places));
      }
    }
  }

  private static <T> List<T> longer(List<T> list, T last) {
    List<T> longer = new ArrayList<>(list);
    longer.add(last);
    return longer;
  }

  /**
   * The tree with this value changed.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if nothing has the address
   */
  public MapNode in(MapNode tree) {
    if (SecondLine.isMeantBy(address)) {
      return SecondLine.in(tree, address, value);
    }
    return PondFloor.kept(address, tree, new Placement(address, value, places).in(tree));
  }

  /** Which value: {@code lines.intake.skimmer.clogged}. */
  public String address() {
    return address.text();
  }

  /** What it becomes: {@code 40 %}. */
  public String value() {
    return value instanceof Scalar scalar ? scalar.text() : value.words();
  }
}
