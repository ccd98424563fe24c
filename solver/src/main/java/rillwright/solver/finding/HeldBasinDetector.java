package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.finding.Figure.Unit;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Fall;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Basins of a known area that are held at their level and give more than can come back to them. */
final class HeldBasinDetector implements Detector {
  /** Less than this share of what it gives is nothing; common practice, no source. */
  private static final double UNSEEN_SHARE = 0.01;

  /** Fall of the level by which it is said how soon it is down, m: 1 in. */
  private static final double FALL_M = 0.0254;

  private static final double MINUTE_S = 60;

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (Basin basin : state.network().points(Basin.class)) {
      double gives = -state.point(basin.name()).outflowM3PerS();
      if (gives > 0 && basin.shape().isPresent()) {
        double lacks = gives - comesBackM3PerS(basin, state);
        if (lacks > UNSEEN_SHARE * gives) {
          findings.add(lacks(basin, basin.shape().get(), lacks));
        }
      }
    }
    return findings;
  }

  /** All that leaves above its level, as far as nothing says that it runs elsewhere, m³/s. */
  private static double comesBackM3PerS(Basin basin, SteadyState state) {
    return state.points().stream()
        .filter(point -> point.point().isWayOut() || point.point() instanceof Basin)
        .filter(point -> point.headM().orElse(basin.levelM()) > basin.levelM())
        .filter(point -> mayReach(basin.name(), point))
        .mapToDouble(point -> Math.max(0, point.outflowM3PerS()))
        .sum();
  }

  private static boolean mayReach(PointName basin, PointState from) {
    return !(from.point() instanceof Fall fall)
        || fall.returnsTo().filter(to -> !to.equals(basin)).isEmpty();
  }

  private static Finding lacks(Basin basin, BasinShape shape, double lacksM3PerS) {
    String name = basin.name().value();
    double inchM3 = shape.volumeM3(basin.levelM()) - shape.volumeM3(basin.levelM() - FALL_M);
    return Finding.of(
            Severity.ADVICE,
            "held-basin-needs-inflow",
            name,
            "\"" + name + "\" is taken as held at its level, but gives ")
        .flow("lacks", lacksM3PerS)
        .then(
            " more than comes back to it. So much must run into it, from a spring or a creek;"
                + " without that it falls ")
        .depth("fall", FALL_M)
        .then(" in ")
        .figure(
            "timeToFall",
            inchM3 / lacksM3PerS,
            Unit.SECOND,
            wording -> time(inchM3 / lacksM3PerS, wording))
        .then(".");
  }

  private static String time(double seconds, Wording wording) {
    return seconds < MINUTE_S ? "less than a minute" : wording.duration(seconds);
  }
}
