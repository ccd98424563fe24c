package rillwright.solver.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.minor.VelocityHeadLoss;

/**
 * Where two consecutive runs of a line differ in bore: what stands between them, unless it states
 * its own loss, takes no part.
 *
 * @param before the first run
 * @param after the second
 */
public record ChangeOfBore(Placed<Run> before, Placed<Run> after) {

  /** Those of a line, in order. */
  static List<ChangeOfBore> listIn(Line line) {
    List<ChangeOfBore> changes = new ArrayList<>();
    Optional<Placed<Run>> last = Optional.empty();
    for (int i = 0; i < line.parts().size(); i++) {
      if (line.parts().get(i) instanceof Run run) {
        Placed<Run> here = new Placed<>(line, i, run);
        last.filter(other -> !other.part().inside().equals(run.inside()))
            .ifPresent(other -> changes.add(new ChangeOfBore(other, here)));
        last = Optional.of(here);
      } else if (line.parts().get(i).coversChangeOfBore()) {
        last = Optional.empty();
      }
    }
    return changes;
  }

  /** The word for its kind in results. */
  public String kind() {
    return "change of bore";
  }

  /** Whether a place among the line's parts lies between the two runs. */
  public boolean spans(int place) {
    return before.index() < place && place < after.index();
  }

  /** What it takes, by direction. */
  public VelocityHeadLoss law() {
    return VelocityHeadLoss.ofChange(before.part().inside(), after.part().inside());
  }
}
