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
 * @param coversChangeOfBore whether it takes in the change of bore between the runs beside it
 */
public record Loss(HeadLaw law, Optional<Bore> bore, boolean coversChangeOfBore) implements Part {
  public Loss {
    Require.given("law of a loss", law);
    Require.given("bore of a loss", bore);
  }

  /** A loss beside which a change of bore takes what it takes. */
  public Loss(HeadLaw law, Optional<Bore> bore) {
    this(law, bore, false);
  }

  /** The same loss by another law. */
  public Loss withLaw(HeadLaw other) {
    return new Loss(other, bore, coversChangeOfBore);
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
        : new Loss(
            new CloggedLaw(law, factor * factor),
            bore.map(b -> b.times(factor)),
            coversChangeOfBore);
  }
}
