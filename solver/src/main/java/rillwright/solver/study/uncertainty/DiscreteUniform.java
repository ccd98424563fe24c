package rillwright.solver.study.uncertainty;

import java.util.List;

/**
 * One of some values, all as likely.
 *
 * @param values rising, two or more; copied
 */
public record DiscreteUniform(List<Double> values) implements Distribution {
  public DiscreteUniform {
    values = List.copyOf(values);
    if (values.size() < 2) {
      throw new IllegalArgumentException("one of " + values.size() + " values is no choice");
    }
  }

  @Override
  public double quantile(double chance) {
    return values.get(Math.min(values.size() - 1, (int) (chance * values.size())));
  }
}
