package rillwright.cli.file.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;

/** Puts new sections, and new fields of lines, where people write them. */
final class UsualOrder {
  private static final List<String> SECTIONS =
      List.of(
          "rillwright",
          "title",
          "job",
          "show",
          "water",
          "site",
          "running",
          "evaporation",
          "prices",
          "points",
          "lines",
          "pumps",
          "streams",
          "readings",
          "signs",
          "conditions");
  private static final List<String> LINE =
      List.of("from", "to", "pipe", "entrance", "exit", "note", "photo", "parts");

  private UsualOrder() {}

  /** The changed tree with what it has more than before put in its place. */
  static MapNode of(MapNode before, MapNode changed) {
    Optional<Entry> section =
        changed.find("lines").filter(lines -> lines.value() instanceof MapNode);
    MapNode withLines =
        section
            .map(lines -> changed.with(withFields(before.findMap("lines"), lines)))
            .orElse(changed);
    return ordered(before, withLines, SECTIONS);
  }

  private static Entry withFields(Optional<MapNode> before, Entry section) {
    MapNode lines = (MapNode) section.value();
    List<Entry> entries = new ArrayList<>();
    for (Entry line : lines.entries()) {
      Optional<MapNode> was = before.flatMap(all -> all.findMap(line.key()));
      boolean isThere = was.isPresent() && line.value() instanceof MapNode;
      entries.add(
          isThere
              ? new Entry(
                  line.key(), line.keyPlace(), ordered(was.get(), (MapNode) line.value(), LINE))
              : line);
    }
    return new Entry(section.key(), section.keyPlace(), new MapNode(entries, lines.place()));
  }

  private static MapNode ordered(MapNode before, MapNode changed, List<String> order) {
    List<Entry> entries = new ArrayList<>();
    for (Entry entry : changed.entries()) {
      boolean isNew = before.find(entry.key()).isEmpty() && order.contains(entry.key());
      entries.add(isNew ? positionOf(entry, entries, order) : entries.size(), entry);
    }
    return new MapNode(entries, changed.place());
  }

  /** Behind the last one that usually comes before it. */
  private static int positionOf(Entry entry, List<Entry> there, List<String> order) {
    List<String> earlier = order.subList(0, order.indexOf(entry.key()));
    int position = 0;
    for (int i = 0; i < there.size(); i++) {
      if (earlier.contains(there.get(i).key())) {
        position = i + 1;
      }
    }
    return position;
  }
}
