package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** What is laid out so that it is more likely a slip in the file than meant. */
final class LayoutDetector implements Detector {

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    boolean pumped = state.network().isPumped();
    for (Fall fall : state.network().points(Fall.class)) {
      OptionalDouble water = waterBelow(state.network(), fall);
      boolean comesBack = pumped || fall.returnsTo().isPresent();
      if (comesBack && water.isPresent() && fall.crestM() <= water.getAsDouble()) {
        findings.add(crestNotAboveWater(fall.name().value(), water.getAsDouble() - fall.crestM()));
      }
    }
    for (PointState point : state.points()) {
      if (!pumped && point.isUnderWish()) {
        findings.add(noPump(point.point().name().value()));
      }
    }
    return findings;
  }

  /** The level that a fall pours into: of the basin that it names, else of the lowest one. */
  private static OptionalDouble waterBelow(Network network, Fall fall) {
    if (fall.returnsTo().isPresent()) {
      Point basin = network.point(fall.returnsTo().get());
      return basin instanceof Basin named
          ? OptionalDouble.of(named.levelM())
          : OptionalDouble.empty();
    }
    return network.points(Basin.class).stream().mapToDouble(Basin::levelM).min();
  }

  /**
   * A fall whose crest does not stand above the water that it falls into. Water that nothing pumps
   * comes from above and does not go back there, unless the file says so.
   */
  private static Finding crestNotAboveWater(String at, double belowM) {
    Finding crest =
        Finding.of(
            Severity.PROBLEM, "crest-not-above-water", at, "The crest of \"" + at + "\" lies ");
    return (belowM == 0
            ? crest.then("level with the water")
            : crest.depth("belowWater", belowM).then(" below the water"))
        .then(
            " that it should fall into: see its sign, and that all levels are measured from one"
                + " mark.");
  }

  /** Wishes, and no pump to fulfil them. */
  private static Finding noPump(String at) {
    return Finding.of(
        Severity.PROBLEM,
        "no-pump",
        at,
        "\"" + at + "\" lacks water, and no line of the file has a pump.");
  }
}
