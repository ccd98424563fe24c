package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.SeriesLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Setting;
import rillwright.solver.network.Skimmer;
import rillwright.solver.water.Water;

/**
 * A line between two places whose heads are known at every moment: its flow follows from the
 * difference alone.
 */
final class HeldLine {
  /**
   * Below this difference of level a flow between two open waters goes with the difference, m: less
   * than anyone can measure, and it keeps two nearly level waters from quarrelling.
   */
  private static final double HARDLY_ANY_M = 1e-3;

  private static final int MOST_STEPS = 200;
  private static final double ROUNDING = 1e-13;
  private static final double FIRST_FLOW_M3_PER_S = 1e-4;

  private final Water water;
  private final List<Part> skimmers = new ArrayList<>();
  private final List<HeadLaw> rest = new ArrayList<>();

  HeldLine(Network network, Line line, List<HeadLaw> more) {
    this.water = network.water();
    List<HeadLaw> laws = network.lawsOf(line);
    for (int i = 0; i < laws.size(); i++) {
      boolean isPart = i > 0 && i <= line.parts().size();
      if (isPart && line.parts().get(i - 1) instanceof Skimmer) {
        skimmers.add(line.parts().get(i - 1));
      } else {
        rest.add(laws.get(i));
      }
    }
    rest.addAll(more);
  }

  /**
   * Flow, m³/s, between two heads, m. Where it stands higher downstream of a skimmer's mouth than
   * upstream of it, as it may for a while after a stop, water runs out as it ran in.
   */
  double flowM3PerS(double headFromM, double headToM) {
    if (!skimmers.isEmpty() && headToM > headFromM) {
      return -flowM3PerS(headToM, headFromM);
    }
    List<HeadLaw> laws = new ArrayList<>(rest);
    for (Part skimmer : skimmers) {
      laws.add(skimmer.law(new Setting(water, OptionalDouble.of(headFromM))));
    }
    SeriesLaw law = new SeriesLaw(laws);
    double difference = headFromM - headToM;
    boolean pumped = law.headLossAt(Math.max(0, law.leastFlow())) < 0;
    if (pumped || Math.abs(difference) >= HARDLY_ANY_M) {
      return flowAt(law, difference);
    }
    return flowAt(law, Math.copySign(HARDLY_ANY_M, difference))
        * Math.abs(difference)
        / HARDLY_ANY_M;
  }

  /** The flow at which a law takes a head, its bounds kept. */
  static double flowAt(HeadLaw law, double headM) {
    double still = Math.max(law.leastFlow(), Math.min(law.greatestFlow(), 0));
    return headM >= law.headLossAt(still)
        ? flowUpFrom(still, law, headM)
        : flowDownFrom(still, law, headM);
  }

  private static double flowUpFrom(double still, HeadLaw law, double headM) {
    double greatest = law.greatestFlow();
    double low = still;
    double high = Math.min(greatest, FIRST_FLOW_M3_PER_S);
    while (high < greatest && law.headLossAt(high) < headM) {
      low = high;
      high = Math.min(greatest, 2 * high);
    }
    return law.headLossAt(high) <= headM ? high : flowBetween(low, high, law, headM);
  }

  private static double flowDownFrom(double still, HeadLaw law, double headM) {
    double least = law.leastFlow();
    double high = still;
    double low = Math.max(least, -FIRST_FLOW_M3_PER_S);
    while (low > least && law.headLossAt(low) > headM) {
      high = low;
      low = Math.max(least, 2 * low);
    }
    return law.headLossAt(low) >= headM ? low : flowBetween(low, high, law, headM);
  }

  /** Newton's method between brackets. */
  private static double flowBetween(double least, double greatest, HeadLaw law, double headM) {
    double low = least;
    double high = greatest;
    double flow = (low + high) / 2;
    for (int step = 0; step < MOST_STEPS && high - low > 1e-16 * Math.max(-low, high); step++) {
      double error = law.headLossAt(flow) - headM;
      if (error == 0) {
        return flow;
      }
      low = error < 0 ? flow : low;
      high = error > 0 ? flow : high;
      double slope = law.slopeAt(flow);
      double next = flow - error / slope;
      boolean inside = next > low && next < high && step % 8 != 7;
      double better = inside ? next : (low + high) / 2;
      if (inside && Math.abs(better - flow) <= ROUNDING * Math.abs(flow)) {
        return better;
      }
      flow = better;
    }
    return flow;
  }
}
