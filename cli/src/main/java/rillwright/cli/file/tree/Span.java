package rillwright.cli.file.tree;

import java.util.List;

/**
 * From where to where a piece of a file reaches in its text, in characters of Java. Its pieces are
 * those of the {@link Node} that was read from it, in the same order.
 *
 * @param start where it begins
 * @param end where its last piece ends: after its closing bracket or quote, without white space and
 *     comments that follow
 * @param isBlock whether it is a map or list with its pieces on lines of their own, without
 *     brackets
 * @param keys the names of a map; none of anything else; copied
 * @param pieces what belongs to the names, or the items of a list; none of a value; copied
 */
public record Span(int start, int end, boolean isBlock, List<Span> keys, List<Span> pieces) {
  public Span {
    keys = List.copyOf(keys);
    pieces = List.copyOf(pieces);
  }

  /** The same with another end. */
  Span endingAt(int newEnd) {
    return new Span(start, newEnd, isBlock, keys, pieces);
  }
}
