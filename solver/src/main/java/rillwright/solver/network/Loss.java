package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;

/**
 * Anything else that takes head.
 *
 * @param law its law
 * @param bore on whose velocity head it is taken, where it is
 */
public record Loss(HeadLaw law, Optional<Bore> bore) implements Part {

  @Override
  public String kind() {
    return "loss";
  }

  @Override
  public HeadLaw law(Setting setting) {
    return law;
  }
}
