package rillwright.solver.study.diagnosis.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;

/**
 * The place of a part.
 *
 * @param line its line
 * @param index its place among the line's parts, from 0
 */
public record PartPlace(LineName line, int index) {

  /** Where a part stands. */
  public static PartPlace of(Placed<?> placed) {
    return new PartPlace(placed.line().name(), placed.index());
  }

  /** The places at which something holds, in the order of the network. */
  public static List<PartPlace> list(Network network, BiPredicate<Line, Integer> holds) {
    List<PartPlace> places = new ArrayList<>();
    for (Line line : network.lines()) {
      for (int i = 0; i < line.parts().size(); i++) {
        if (holds.test(line, i)) {
          places.add(new PartPlace(line.name(), i));
        }
      }
    }
    return places;
  }
}
