package rillwright.cli.study.section;

import java.util.Optional;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.StreamItem;

/**
 * Something that the water meets on its way.
 *
 * @param subject what it is
 * @param before on the side from which the water comes
 * @param after on the other side; at a greater distance where it has a length
 */
public record Station(Subject subject, Measures before, Measures after) {

  /** What is met. */
  public sealed interface Subject permits AtPoint, InLine, InStream, Falling {}

  /** A point of the network. */
  public record AtPoint(Point point) implements Subject {}

  /**
   * A part of a line.
   *
   * @param line its line
   * @param index its place among the line's parts, from 0
   * @param part itself
   */
  public record InLine(LineName line, int index, Part part) implements Subject {}

  /**
   * A piece of a stream.
   *
   * @param stream its name
   * @param item itself
   * @param running how water runs in it; empty without a balance
   */
  public record InStream(String stream, StreamItem item, Optional<ItemState> running)
      implements Subject {}

  /** Water that falls freely to the open water that it comes home to. */
  public record Falling() implements Subject {}

  /** The word for its kind in files and results; empty for water that falls freely. */
  public Optional<String> kind() {
    if (subject instanceof AtPoint at) {
      return Optional.of(at.point().kind());
    } else if (subject instanceof InLine in) {
      return Optional.of(in.part().kind());
    } else if (subject instanceof InStream in) {
      return Optional.of(in.item().kind());
    }
    return Optional.empty();
  }

  /** Length along the way, m, 0 for what has none. */
  public double lengthM() {
    return after.distanceM() - before.distanceM();
  }

  /** Whether the pipe, as drawn, is under suction at one of its sides. */
  public boolean isUnderSuction() {
    return subject instanceof InLine && (before.isUnderSuction() || after.isUnderSuction());
  }
}
