package rillwright.cli.study.section;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.Run;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.StreamItem;
import rillwright.solver.water.Water;

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

  /** Water that falls freely to the open water that it returns to. */
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

  /**
   * Pressure against a shut valve at its lower side, Pa above the air's; empty where no pump makes
   * any or no elevation is known.
   */
  public OptionalDouble shutOffPressurePa(Water water) {
    return Stream.of(before, after)
        .filter(side -> side.source() != Measures.Source.ASSUMED)
        .filter(side -> side.shutOffHeadM().isPresent())
        .mapToDouble(side -> side.shutOffHeadM().getAsDouble() - side.elevationM())
        .map(head -> water.densityKgPerM3() * Gravity.STANDARD_M_PER_S2 * head)
        .max();
  }

  /** Pressure that a pipe is made for at the water's temperature, Pa; empty where not known. */
  public OptionalDouble ratedPressurePa(Water water) {
    return subject instanceof InLine in && in.part() instanceof Run run && run.wall().isPresent()
        ? OptionalDouble.of(run.wall().get().ratedPressureAt(water.temperatureC()))
        : OptionalDouble.empty();
  }
}
