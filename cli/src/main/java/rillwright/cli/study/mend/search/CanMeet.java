package rillwright.cli.study.mend.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.file.Project;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.sheet.fact.SpeedRange;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Valve;
import rillwright.solver.pumping.HeldToTarget;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.study.mending.AtMost;
import rillwright.solver.study.mending.LossFree;
import rillwright.solver.study.mending.OwnWay;

/**
 * Whether a set that holds some changes can meet all targets, whatever the rest of it is: the lines
 * whose size is still open take nothing, valves stand wide open, pumps run at their fastest, high
 * points let all through, what is on no way to a target is shut, and each fall is held to its
 * target. In a tree fed by one pump the flows are then those of the targets, and every other size
 * and setting takes more head. Elsewhere each fall is looked at by itself, with no loss anywhere.
 */
final class CanMeet {
  private static final double EQUAL = 1e-9;

  private final Site site;
  private final Set<LineName> ways = new LinkedHashSet<>();
  private final boolean isTree;

  CanMeet(Site site) {
    this.site = site;
    boolean tree = site.network().placed(Pump.class).size() < 2;
    for (PointName fall : site.targets().falls()) {
      Set<LineName> way = OwnWay.to(fall, site.state());
      ways.addAll(way);
      tree &= isOneLine(way);
    }
    this.isTree = tree;
  }

  /** Whether the sizes that are chosen matter, and not the pumps alone. */
  boolean goesBySizes() {
    return isTree;
  }

  private boolean isOneLine(Set<LineName> way) {
    long ends =
        way.stream()
            .map(name -> site.network().line(name))
            .map(line -> site.state().line(line.name()).flowM3PerS() < 0 ? line.from() : line.to())
            .distinct()
            .count();
    return !way.isEmpty() && ends == way.size();
  }

  /**
   * Whether all targets can be met.
   *
   * @param with the project with what is taken so far
   * @param open lines whose size is still open
   */
  boolean meets(Project with, Collection<LineName> open) {
    return isTree
        ? meetsInATree(with, open)
        : site.targets().falls().stream().allMatch(fall -> meetsByItself(with, fall));
  }

  /** Whether one fall can get its target with no loss anywhere and every other shut. */
  private boolean meetsByItself(Project with, PointName fall) {
    return LossFree.mostM3PerS(with.network(), fall, pump -> fastest(pump, with))
            .orElse(Double.POSITIVE_INFINITY)
        >= site.targets().at(fall) * (1 - EQUAL);
  }

  private boolean meetsInATree(Project with, Collection<LineName> open) {
    List<Line> changed = new ArrayList<>();
    for (Line line : with.network().lines()) {
      changed.add(open.contains(line.name()) ? AtMost.withoutFriction(line) : freed(line));
    }
    Network free = with.network().withLines(changed);
    for (Placed<Pump> pump : free.placed(Pump.class)) {
      free = free.withPart(pump.line().name(), pump.index(), fastest(pump.part(), with));
    }
    Network held = HeldToTarget.of(free, site.targets(), site.targets().falls());
    Optional<SteadyState> state = Site.balanced(held);
    return state.isEmpty()
        || site.targets().falls().stream()
            .allMatch(fall -> site.targets().shareAt(fall, state.get()) >= 1 - EQUAL);
  }

  private Line freed(Line line) {
    if (!ways.contains(line.name())) {
      return line.shut();
    }
    List<Part> parts = new ArrayList<>(line.parts());
    parts.removeIf(HighPoint.class::isInstance);
    return line.withParts(parts).withEach(Valve.class, Valve::wideOpen);
  }

  private static Pump fastest(Pump pump, Project with) {
    double greatest = Pumps.range(with, pump).map(SpeedRange::greatest).orElse(1.0);
    return pump.atSpeed(Math.max(greatest, pump.set().speed()));
  }
}
