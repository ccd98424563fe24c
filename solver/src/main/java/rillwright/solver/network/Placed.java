package rillwright.solver.network;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.invariant.Require;

/**
 * A part where it stands.
 *
 * @param line its line
 * @param index its place among the line's parts, from 0
 * @param part itself
 */
public record Placed<P extends Part>(Line line, int index, P part) {
  public Placed {
    Require.given("line", line);
    Require.given("part", part);
  }

  /** The parts of a kind in a line, in the order the water meets them. */
  static <P extends Part> List<Placed<P>> in(Line line, Class<P> kind) {
    List<Placed<P>> placed = new ArrayList<>();
    for (int i = 0; i < line.parts().size(); i++) {
      if (kind.isInstance(line.parts().get(i))) {
        placed.add(new Placed<>(line, i, kind.cast(line.parts().get(i))));
      }
    }
    return placed;
  }
}
