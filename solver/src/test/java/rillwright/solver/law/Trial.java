package rillwright.solver.law;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A law to be tried.
 *
 * @param law the law
 * @param usualFlowM3PerS a flow of the size at which the law is used, m³/s, greater than 0
 * @param jointsM3PerS flows other than 0 at which its pieces meet, m³/s
 */
public record Trial(HeadLaw law, double usualFlowM3PerS, List<Double> jointsM3PerS) {
  public Trial {
    jointsM3PerS = List.copyOf(jointsM3PerS);
  }

  /** A law in one piece. */
  public static Trial inOnePiece(HeadLaw law, double usualFlowM3PerS) {
    return new Trial(law, usualFlowM3PerS, List.of());
  }

  /** A law, the same both ways, with the given joints on either side. */
  public static Trial withJointsBothWays(HeadLaw law, double usualFlowM3PerS, List<Double> joints) {
    List<Double> all = new ArrayList<>(joints);
    joints.forEach(joint -> all.add(-joint));
    return new Trial(law, usualFlowM3PerS, all);
  }

  /** Flows within the law's bounds, from tiny to three times the usual, in rising order. */
  public List<Double> flows(SplittableRandom random) {
    double least = Math.max(law.leastFlow(), -3 * usualFlowM3PerS);
    double greatest = Math.min(law.greatestFlow(), 3 * usualFlowM3PerS);
    List<Double> flows = new ArrayList<>();
    flows.add(0.0);
    for (int i = 0; i < 60 && least < greatest; i++) {
      flows.add(least + random.nextDouble() * (greatest - least));
      double share = Math.pow(10, -6 * random.nextDouble());
      flows.add(least * share);
      flows.add(greatest * share);
      flows.add(greatest - greatest * share * share);
    }
    Collections.sort(flows);
    return flows;
  }

  /** Distance from a flow to the nearest joint, bound or no flow, m³/s. */
  public double roomAround(double flowM3PerS) {
    double room = Math.abs(flowM3PerS);
    room = Math.min(room, Math.abs(flowM3PerS - law.leastFlow()));
    room = Math.min(room, Math.abs(flowM3PerS - law.greatestFlow()));
    for (double joint : jointsM3PerS) {
      room = Math.min(room, Math.abs(flowM3PerS - joint));
    }
    return room;
  }

  /** The joints, and no flow, that the law allows on both sides. */
  public List<Double> innerJoints() {
    List<Double> joints = new ArrayList<>(jointsM3PerS);
    joints.add(0.0);
    joints.removeIf(joint -> joint <= law.leastFlow() || joint >= law.greatestFlow());
    return joints;
  }
}
