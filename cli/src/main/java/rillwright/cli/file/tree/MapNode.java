package rillwright.cli.file.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.Place;

/**
 * Names with what belongs to each; no name occurs twice.
 *
 * @param entries in the order of the file; copied
 * @param place where it begins
 */
public record MapNode(List<Entry> entries, Place place) implements Node {
  public MapNode {
    entries = List.copyOf(entries);
  }

  /** The entry of a name. */
  public Optional<Entry> find(String key) {
    for (Entry entry : entries) {
      if (entry.key().equals(key)) {
        return Optional.of(entry);
      }
    }
    return Optional.empty();
  }

  /** What belongs to a name. */
  public Optional<Node> findNode(String key) {
    return find(key).map(Entry::value);
  }

  /** The items of the list of a name; none if there is no such list. */
  public List<Node> listItems(String key) {
    return findNode(key)
        .map(value -> value instanceof ListNode list ? list.items() : List.<Node>of())
        .orElse(List.of());
  }

  /** The map of a name; empty if there is none or it is another thing. */
  public Optional<MapNode> findMap(String key) {
    return findNode(key).filter(MapNode.class::isInstance).map(MapNode.class::cast);
  }

  @Override
  public Optional<String> findText(String key) {
    return findNode(key).filter(Scalar.class::isInstance).map(value -> ((Scalar) value).text());
  }

  /** All names, in the order of the file. */
  public List<String> keys() {
    return entries.stream().map(Entry::key).toList();
  }

  /** The same map with an entry put in place of that of its name, or at the end. */
  public MapNode with(Entry changed) {
    List<Entry> all = new ArrayList<>(entries);
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).key().equals(changed.key())) {
        all.set(i, changed);
        return new MapNode(all, place);
      }
    }
    all.add(changed);
    return new MapNode(all, place);
  }

  @Override
  public String words() {
    return "a group of fields";
  }
}
