package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.Shut;
import rillwright.solver.law.filter.CloggedLaw;
import rillwright.solver.law.filter.OpenTopLaw;

/**
 * A filter, net or mat.
 *
 * @param clean its law when clean
 * @param clogged share that is clogged, 0 to 1; at 1 its mats pass nothing
 * @param openTopM loss at which an open filter runs over, m, where it can
 * @param holdsM3 water that drains out of it when the pump stops, m³
 */
public record Filter(HeadLaw clean, double clogged, OptionalDouble openTopM, double holdsM3)
    implements Part {
  /** The open share of mats that pass nothing, so that an open filter has one law for all. */
  private static final double NEXT_TO_NOTHING = 1e-6;

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
  public boolean coversChangeOfBore() {
    return true;
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.empty();
  }

  @Override
  public HeadLaw law(Setting setting) {
    if (openTopM.isPresent()) {
      return openTopLaw(openTopM.getAsDouble());
    }
    return clogged >= 1 ? new Shut() : new CloggedLaw(clean, 1 - clogged);
  }

  /** Its law, where it is open; empty where it is closed. */
  public Optional<OpenTopLaw> openTopLaw() {
    return openTopM.isPresent()
        ? Optional.of(openTopLaw(openTopM.getAsDouble()))
        : Optional.empty();
  }

  private OpenTopLaw openTopLaw(double topM) {
    return new OpenTopLaw(new CloggedLaw(clean, Math.max(NEXT_TO_NOTHING, 1 - clogged)), topM);
  }

  /** The same filter with another share clogged. */
  public Filter withClogged(double share) {
    return new Filter(clean, share, openTopM, holdsM3);
  }
}
