package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.Shut;
import rillwright.solver.law.filter.CloggedLaw;

/**
 * A filter, net or mat.
 *
 * @param clean its law when clean
 * @param clogged share that is clogged, 0 to 1; at 1 it passes nothing
 * @param openTopM loss at which an open filter runs over, m, where it can
 * @param holdsM3 water that drains out of it when the pump stops, m³
 */
public record Filter(HeadLaw clean, double clogged, OptionalDouble openTopM, double holdsM3)
    implements Part {
  public Filter {
    Require.given("clean law of a filter", clean);
    Require.between("clogged share of a filter", clogged, 0, 1, "");
    Require.positive("open top of a filter", openTopM, "m");
    Require.atLeast("water held by a filter", holdsM3, 0, "m³");
  }

  @Override
  public String kind() {
    return "filter";
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.empty();
  }

  @Override
  public HeadLaw law(Setting setting) {
    return clogged >= 1 ? new Shut() : new CloggedLaw(clean, 1 - clogged);
  }

  /** The same filter with another share clogged. */
  public Filter withClogged(double share) {
    return new Filter(clean, share, openTopM, holdsM3);
  }
}
