package rillwright.solver.law.weir;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;

/**
 * A crest that falls evenly from end to end. Its head is taken above its low end; the flow is the
 * mean of the level crest's over the heads along it. The ruler stands in the middle.
 *
 * <p>Source: none; each piece of the crest passes what a level crest of its width would, common
 * practice.
 *
 * @param level the same crest, level
 * @param dropM by how much one end is lower than the other, m, greater than 0
 */
public record TiltedCrest(Weir level, double dropM) implements Weir {
  /** Gauss and Legendre's points and weights on −1 to 1, four points. */
  private static final double[][] GAUSS = {
    {-0.8611363115940526, 0.3478548451374538},
    {-0.3399810435848563, 0.6521451548625461},
    {0.3399810435848563, 0.6521451548625461},
    {0.8611363115940526, 0.3478548451374538},
  };

  public TiltedCrest {
    Require.given("level crest", level);
    Require.positive("drop of the crest from end to end", dropM, "m");
  }

  /** With √h in place of h, so that a flow that goes with h^1.5 is integrated exactly. */
  @Override
  public double flowAt(double headM) {
    if (headM <= 0) {
      return 0;
    }
    double low = Math.sqrt(Math.max(0, headM - dropM));
    double high = Math.sqrt(headM);
    double half = Math.min(headM, dropM) / (high + low) / 2; // half of high less low
    double sum = 0;
    for (double[] node : GAUSS) {
      double root = low + half * (1 + node[0]);
      sum += node[1] * half * 2 * root * level.flowAt(root * root);
    }
    return sum / dropM;
  }

  @Override
  public double flowSlopeAt(double headM) {
    return (level.flowAt(headM) - level.flowAt(Math.max(0, headM - dropM))) / dropM;
  }

  @Override
  public double headAt(double flowM3PerS) {
    return HeadSearch.headAt(this, flowM3PerS, level.headAt(Math.max(0, flowM3PerS)) + dropM / 2);
  }

  @Override
  public double rulerHeadAt(double flowM3PerS) {
    return Math.max(0, headAt(flowM3PerS) - dropM / 2);
  }

  @Override
  public OptionalDouble brinkDepthAt(double flowM3PerS) {
    return level.brinkDepthAt(level.flowAt(rulerHeadAt(flowM3PerS)));
  }

  @Override
  public OptionalDouble crestWidthM() {
    return level.crestWidthM();
  }
}
