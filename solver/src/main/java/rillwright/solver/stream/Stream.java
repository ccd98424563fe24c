package rillwright.solver.stream;

import java.util.List;
import rillwright.solver.network.PointName;

/**
 * The way of the water from a fall home.
 *
 * @param name unique among streams
 * @param from the fall that it begins at
 * @param to the basin that it ends in
 * @param items in the order the water meets them; copied
 */
public record Stream(String name, PointName from, PointName to, List<StreamItem> items) {
  public Stream {
    items = List.copyOf(items);
  }

  /** By how much the water falls from the first item to the last, m. */
  public double dropM() {
    return items.stream().mapToDouble(StreamItem::dropM).sum();
  }
}
