package rillwright.cli.file.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.wording.PlainText;

/**
 * One more line beside one that there is, in the same trench: {@code lines.supply.second line=yes}.
 * All of the line is there twice but its gauges; the second is clean. Of a line with a pump, a
 * check valve or a filter that is what comes after the last of them, from a tee on: {@code supply}
 * ends there, {@code supply first} and {@code supply second} go on.
 */
final class SecondLine {
  private static final String FIELD = "second line";
  private static final String YES = "yes";
  private static final String POINTS = "points";
  private static final String PIPE = "pipe";
  private static final String EXIT = "exit";
  private static final String GAUGE = "gauge";

  /** There once, whatever comes after them twice. */
  private static final Set<String> SINGLE = Set.of("pump", "check valve", "filter");

  /** These stand beside the pump where they follow it at once. */
  private static final Set<String> BESIDE = Set.of("valve", GAUGE);

  /** What a new pipe or skimmer has not. */
  private static final Set<String> DIRT = Set.of("deposit", "clogged");

  private final MapNode tree;
  private final String name;
  private final MapNode line;
  private final Place place;

  private SecondLine(MapNode tree, String name, MapNode line, Place place) {
    this.tree = tree;
    this.name = name;
    this.line = line;
    this.place = place;
  }

  /** Whether an address means one. */
  static boolean isMeantBy(Address address) {
    List<String> steps = address.steps();
    return steps.size() == 3 && steps.get(0).equals(Placement.LINES) && steps.get(2).equals(FIELD);
  }

  /**
   * The tree with one more line.
   *
   * @throws InvalidInput if the value is not {@code yes}, there is no such line, nothing of it can
   *     be there twice, or a name is taken
   */
  static MapNode in(MapNode tree, Address address, Node value) {
    Place place = value.place();
    if (!(value instanceof Scalar text) || !text.text().equals(YES)) {
      throw new InvalidInput(place, "a second line is asked for with \"yes\"");
    }
    String name = address.steps().get(1);
    MapNode line =
        tree.findMap(Placement.LINES)
            .flatMap(lines -> lines.findMap(name))
            .orElseThrow(
                () ->
                    new InvalidInput(
                        place,
                        "there is no "
                            + PlainText.quoted(name)
                            + " in the section "
                            + PlainText.quoted(Placement.LINES)));
    return new SecondLine(tree, name, line, place).added();
  }

  private MapNode added() {
    List<Node> parts = line.listItems(Placement.PARTS);
    int once = countOnce(parts);
    List<Node> twice = parts.subList(once, parts.size());
    if (twice.stream().noneMatch(part -> !kind(part).equals(GAUGE))) {
      throw new InvalidInput(
          place, "line " + PlainText.quoted(name) + " has nothing that could be there twice");
    }
    List<Node> copied =
        twice.stream().filter(part -> !kind(part).equals(GAUGE)).map(SecondLine::cleaned).toList();
    String second = name + " second";
    if (once == 0) {
      return withLine(tree, second, copy(from(), to(), copied, true));
    }
    String tee = name + " tee";
    Entry kind = entry("kind", text("tee"));
    Node point = new MapNode(List.of(kind), place);
    MapNode begun =
        new MapNode(
                line.entries().stream().filter(entry -> !entry.key().equals(EXIT)).toList(),
                line.place())
            .with(entry("to", text(tee)))
            .with(entry(Placement.PARTS, new ListNode(parts.subList(0, once), place)));
    MapNode all = withNew(tree, POINTS, tee, point);
    MapNode lines = all.findMap(Placement.LINES).orElseThrow().with(entry(name, begun));
    all = all.with(entry(Placement.LINES, lines));
    List<Node> first = withFitting("tee run", twice);
    all = withLine(all, name + " first", copy(text(tee), to(), first, false));
    return withLine(all, second, copy(text(tee), to(), withFitting("tee branch", copied), true));
  }

  private static int countOnce(List<Node> parts) {
    int once = 0;
    for (int i = 0; i < parts.size(); i++) {
      if (SINGLE.contains(kind(parts.get(i)))) {
        once = i + 1;
      }
    }
    while (once > 0 && once < parts.size() && BESIDE.contains(kind(parts.get(once)))) {
      once++;
    }
    return once;
  }

  private static String kind(Node part) {
    return part instanceof MapNode map && !map.entries().isEmpty()
        ? map.entries().get(0).key()
        : "";
  }

  private Node from() {
    return line.findNode("from").orElseGet(() -> text(""));
  }

  private Node to() {
    return line.findNode("to").orElseGet(() -> text(""));
  }

  /** Where the line names its pipe, a fitting has a bore at the tee. */
  private List<Node> withFitting(String type, List<Node> parts) {
    if (line.find(PIPE).isEmpty()) {
      return parts;
    }
    List<Node> all = new ArrayList<>();
    Node fields = new MapNode(List.of(entry("type", text(type))), place);
    all.add(new MapNode(List.of(entry("fitting", fields)), place));
    all.addAll(parts);
    return all;
  }

  private static Node cleaned(Node node) {
    return node instanceof MapNode map
        ? new MapNode(
            map.entries().stream()
                .filter(entry -> !DIRT.contains(entry.key()))
                .map(entry -> new Entry(entry.key(), entry.keyPlace(), cleaned(entry.value())))
                .toList(),
            map.place())
        : node;
  }

  private MapNode copy(Node from, Node to, List<Node> parts, boolean isNew) {
    List<Entry> entries = new ArrayList<>(List.of(entry("from", from), entry("to", to)));
    line.find(PIPE)
        .map(pipe -> isNew ? entry(PIPE, cleaned(pipe.value())) : pipe)
        .ifPresent(entries::add);
    line.find(EXIT).ifPresent(entries::add);
    if (from.equals(from())) {
      line.find("entrance").ifPresent(entries::add);
    }
    entries.add(entry(Placement.PARTS, new ListNode(parts, place)));
    return new MapNode(entries, place);
  }

  private MapNode withLine(MapNode before, String named, MapNode added) {
    return withNew(before, Placement.LINES, named, added);
  }

  private MapNode withNew(MapNode before, String section, String named, Node added) {
    Optional<MapNode> there = before.findMap(section);
    if (there.isEmpty() || there.get().find(named).isPresent()) {
      throw new InvalidInput(
          place,
          "there is "
              + PlainText.quoted(named)
              + " in the section "
              + PlainText.quoted(section)
              + " already");
    }
    return before.with(entry(section, there.get().with(entry(named, added))));
  }

  private Scalar text(String text) {
    return new Scalar(text, Scalar.Form.TEXT, place);
  }

  private Entry entry(String key, Node value) {
    return new Entry(key, place, value);
  }
}
