package rillwright.cli.study.mend.search;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.study.mend.site.Site;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Tee;

/**
 * What a set of changes costs, and what any set that holds some changes costs at least: what is
 * bought for these, and the electricity that lifts all targets at the best efficiency of the pump.
 *
 * @param byCost by money over the years; else by effort
 */
record LeastCost(Site site, double years, boolean byCost) {
  /** Points of a pump curve that are looked at for its best efficiency. */
  private static final int POINTS = 400;

  /** Between two of these points it is at most so much better. */
  private static final double BETWEEN = 1.01;

  /** What a set that is enough costs. */
  double of(Remedy remedy, List<Option> taken) {
    double year = remedy.costPerYear().orElse(0);
    return byCost ? price(taken) + years * year : effort(taken);
  }

  /**
   * What any set costs that holds some changes.
   *
   * @param electricity over the years, that it takes at least
   */
  double atLeast(List<Option> taken, double electricity) {
    return byCost ? price(taken) + electricity : effort(taken);
  }

  /** What electricity costs over the years with every pump chosen, whatever the sizes, at least. */
  double electricity(Project with) {
    return byCost ? years * ofAYear(with) : 0;
  }

  private static double price(List<Option> taken) {
    return taken.stream().mapToDouble(option -> option.price().orElse(0)).sum();
  }

  private static double effort(List<Option> taken) {
    return taken.stream().mapToDouble(Option::effort).sum();
  }

  /** Of a year: all targets lifted from the highest basin to the lowest fall by the one pump. */
  private double ofAYear(Project with) {
    List<Placed<Pump>> pumps = with.network().placed(Pump.class);
    if (pumps.size() != 1 || !isAllPumped()) {
      return 0;
    }
    double efficiency = best(pumps.get(0).part().set());
    double liftM = liftM();
    double powerW =
        efficiency > 0 && liftM > 0
            ? weight() * site.targets().sumM3PerS() * liftM / efficiency
            : 0;
    return with.running().costPerYear(powerW).orElse(0);
  }

  /** Whether no basin lies above a fall with a target, and no water is let in elsewhere. */
  private boolean isAllPumped() {
    return liftM() > 0
        && site.network().points(Tee.class).stream().noneMatch(tee -> tee.drawM3PerS() < 0);
  }

  private double liftM() {
    double highest =
        site.network().points(Basin.class).stream()
            .mapToDouble(Basin::levelM)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    double lowest =
        site.targets().falls().stream()
            .map(name -> site.network().point(name))
            .mapToDouble(LeastCost::outM)
            .min()
            .orElse(0);
    return lowest - highest;
  }

  /** The least level at which water leaves; without one as low as can be. */
  private static double outM(Point point) {
    return point instanceof Fall fall ? fall.crestM() : Double.NEGATIVE_INFINITY;
  }

  private double weight() {
    return site.network().water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
  }

  private double best(PumpSet set) {
    double best = 0;
    double most = set.publishedRangeM3PerS();
    for (int i = 1; i <= POINTS; i++) {
      double flow = 1.5 * most * i / POINTS;
      double power = set.powerAt(flow).orElse(0);
      if (power <= 0) {
        return 0;
      }
      best = Math.max(best, weight() * flow * set.headAt(flow) / power);
    }
    return BETWEEN * best;
  }
}
