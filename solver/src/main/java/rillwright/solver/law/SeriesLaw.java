package rillwright.solver.law;

import java.util.List;
import rillwright.solver.invariant.Require;

/**
 * Laws one after the other: the same flow through all, the head losses added.
 *
 * @param laws in the order the water meets them; copied
 */
public record SeriesLaw(List<HeadLaw> laws) implements HeadLaw {
  public SeriesLaw {
    laws = Require.all("laws", laws);
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    double sum = 0;
    for (int i = 0, count = laws.size(); i < count; i++) {
      sum += laws.get(i).headLossAt(flowM3PerS);
    }
    return sum;
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    double sum = 0;
    for (int i = 0, count = laws.size(); i < count; i++) {
      sum += laws.get(i).slopeAt(flowM3PerS);
    }
    return sum;
  }

  @Override
  public double leastFlow() {
    double least = Double.NEGATIVE_INFINITY;
    for (HeadLaw law : laws) {
      least = Math.max(least, law.leastFlow());
    }
    return least;
  }

  @Override
  public double greatestFlow() {
    double greatest = Double.POSITIVE_INFINITY;
    for (HeadLaw law : laws) {
      greatest = Math.min(greatest, law.greatestFlow());
    }
    return greatest;
  }
}
