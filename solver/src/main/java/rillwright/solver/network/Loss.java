package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.filter.CloggedLaw;

/**
 * Anything else that takes head.
 *
 * @param law its law
 * @param bore on whose velocity head it is taken, where it is
 */
public record Loss(HeadLaw law, Optional<Bore> bore) implements Part {
  public Loss {
    Require.given("law of a loss", law);
    Require.given("bore of a loss", bore);
  }

  @Override
  public String kind() {
    return "loss";
  }

  @Override
  public HeadLaw law(Setting setting) {
    return law;
  }

  /** A loss on the velocity head is on s times the bore what it was at 1/s² times the flow. */
  @Override
  public Loss narrowed(double factor) {
    return bore.isEmpty()
        ? this
        : new Loss(new CloggedLaw(law, factor * factor), bore.map(b -> b.times(factor)));
  }
}
