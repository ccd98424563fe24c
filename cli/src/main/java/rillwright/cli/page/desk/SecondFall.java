package rillwright.cli.page.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Show;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.edit.Quoting;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.wording.PlainText;

/** A fall off a run of pipe: a tee in the run, from there a branch with a valve, and the fall. */
public final class SecondFall {
  private static final String PARTS = "parts";

  private SecondFall() {}

  /** The middle of a run of this length, written as it is; empty unless it is a number and unit. */
  public static Optional<String> middle(String length) {
    return RunLength.find(length).map(RunLength::half).map(RunLength::text);
  }

  /**
   * Puts it in.
   *
   * @param run where the tee sits: {@code lines.supply.run}
   * @param length of that run
   * @param after how much of it leads to the tee
   * @param fall its name
   * @throws InvalidInput if the tee is not within the run, or the name is taken
   */
  public static EditedText in(
      EditedText text, String run, String length, String after, String fall, Show units) {
    List<String> steps = Address.of(run).steps();
    String line = Places.text(steps.subList(0, 2));
    EditedText near = text.set(run + ".length=" + after);
    MapNode all = line(near.tree(), steps);
    int at = PartStep.of(steps.get(2)).in(all.listItems(PARTS));
    String end = all.findText("to").orElse("");
    String tee = free(near.tree(), "points", "split");
    String rest = free(near.tree(), "lines", "to " + end);
    String branch = free(near.tree(), "lines", "to " + fall);
    EditedText far = text.set(run + ".length=" + rest(length, after));
    List<Node> behind = line(far.tree(), steps).listItems(PARTS);
    return near.saying(
            split(near.tree(), steps.get(1), at, rest, behind.subList(at, behind.size())))
        .set(line + ".to=" + tee)
        .set(address("lines", rest) + ".from=" + tee)
        .add(address("points", tee), NewPieces.point("tee", units).orElseThrow())
        .add(address("points", fall), NewPieces.point("fall", units).orElseThrow())
        .add(address("lines", branch), branch(all, tee, fall, units));
  }

  /** The line ends at a part, and another goes on there. */
  private static MapNode split(MapNode tree, String name, int at, String rest, List<Node> behind) {
    Entry lines = tree.find("lines").orElseThrow();
    MapNode both = (MapNode) lines.value();
    MapNode line = both.findMap(name).orElseThrow();
    Place place = line.place();
    List<Entry> before = new ArrayList<>();
    List<Entry> after = new ArrayList<>();
    for (Entry field : line.entries()) {
      boolean isParts = field.key().equals(PARTS);
      List<Node> items = isParts ? ((ListNode) field.value()).items() : List.of();
      if (isParts) {
        before.add(new Entry(PARTS, place, new ListNode(items.subList(0, at + 1), place)));
        after.add(new Entry(PARTS, place, new ListNode(behind, place)));
      } else if (!field.key().equals("exit")) {
        before.add(field);
      }
      if (List.of("from", "to", "pipe", "exit").contains(field.key())) {
        after.add(field);
      }
    }
    MapNode changed =
        both.with(new Entry(name, place, new MapNode(before, place)))
            .with(new Entry(rest, place, new MapNode(after, place)));
    return tree.with(new Entry(lines.key(), lines.keyPlace(), changed));
  }

  /** Of the same pipe as the line, as far as that says it in one place. */
  private static String branch(MapNode line, String tee, String fall, Show units) {
    List<String> pipe = new ArrayList<>();
    for (Entry field : line.findMap("pipe").map(MapNode::entries).orElse(List.of())) {
      if (field.value() instanceof Scalar written) {
        pipe.add(field.key() + ": " + Quoting.json(written.text()));
      }
    }
    return "{from: %s, to: %s, pipe: {%s}, parts: [{%s}, {%s}]}"
        .formatted(
            Quoting.json(tee),
            Quoting.json(fall),
            pipe.isEmpty() ? NewPieces.pipe(units) : String.join(", ", pipe),
            NewPieces.part("run", units).orElseThrow(),
            NewPieces.part("valve", units).orElseThrow());
  }

  private static String rest(String length, String after) {
    return RunLength.find(length)
        .flatMap(run -> RunLength.find(after).flatMap(run::beyond))
        .map(RunLength::text)
        .orElseThrow(() -> notWithin(length));
  }

  private static InvalidInput notWithin(String length) {
    return new InvalidInput(
        Place.whole("page"),
        "the tee must sit within the run of "
            + length
            + middle(length).map(it -> "; write for example " + PlainText.quoted(it)).orElse(""));
  }

  private static MapNode line(MapNode tree, List<String> steps) {
    return tree.findMap("lines").flatMap(it -> it.findMap(steps.get(1))).orElseThrow();
  }

  private static String address(String section, String name) {
    return Places.text(List.of(section, name));
  }

  /** A name that nothing in a section has yet. */
  private static String free(MapNode tree, String section, String name) {
    List<String> taken = tree.findMap(section).map(MapNode::keys).orElse(List.of());
    String free = name;
    for (int i = 2; taken.contains(free); i++) {
      free = name + " " + i;
    }
    return free;
  }
}
