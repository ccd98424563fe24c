package rillwright.curves.chart.content;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;

/**
 * A sketch of a network: its points at their heights, as far as they are known, and the lines
 * between them. Where a point stands from left to right says nothing but the way of the water.
 *
 * @param title one line, shown as plain text
 * @param caption a sentence below it; may be empty
 * @param levelUnit of the scale, a length
 * @param nodes one or more
 * @param links between them
 */
public record SketchChart(
    String title, String caption, Unit levelUnit, List<Node> nodes, List<Link> links)
    implements Chart {
  public SketchChart {
    nodes = List.copyOf(nodes);
    links = List.copyOf(links);
    if (levelUnit.dimension() != Dimension.LENGTH || nodes.isEmpty()) {
      throw new IllegalArgumentException("a sketch needs a point and a scale of lengths");
    }
    for (Link link : links) {
      if (Math.min(link.from(), link.to()) < 0
          || Math.max(link.from(), link.to()) >= nodes.size()) {
        throw new IllegalArgumentException("a line of a sketch joins two of its points");
      }
    }
  }

  /** What a point is. */
  public enum Kind {
    OPEN_WATER,
    CHAMBER,
    TEE,
    FALL,
    OUTLET
  }

  /**
   * A point.
   *
   * @param kind what it is
   * @param heightM m, where it is known
   * @param words its name, then its figures
   */
  public record Node(Kind kind, OptionalDouble heightM, List<String> words) {
    public Node {
      words = named(words);
      heightM.ifPresent(height -> Finite.check("height", height));
    }
  }

  /**
   * A line.
   *
   * @param from place of a point among the nodes
   * @param to where its water runs
   * @param flows whether any does
   * @param words its name, then its figures
   */
  public record Link(int from, int to, boolean flows, List<String> words) {
    public Link {
      words = named(words);
    }
  }

  private static List<String> named(List<String> words) {
    if (words.isEmpty()) {
      throw new IllegalArgumentException("a point or line of a sketch has a name");
    }
    return List.copyOf(words);
  }
}
