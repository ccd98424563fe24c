package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.pump.SuctionNeeds;

/**
 * Where a pump takes its water in.
 *
 * @param elevationM of its inlet, m, where the file says it
 * @param bore of its inlet, where the file says it
 * @param needs what its data sheet asks of the water there
 * @param screen its cage, where the file says it
 */
public record PumpInlet(
    OptionalDouble elevationM, Optional<Bore> bore, SuctionNeeds needs, Optional<Screen> screen) {
  /** Nothing known. */
  public static final PumpInlet UNKNOWN =
      new PumpInlet(OptionalDouble.empty(), Optional.empty(), SuctionNeeds.NONE);

  public PumpInlet {
    Require.finite("elevation of a pump's inlet", elevationM, "m");
    Require.given("bore of a pump's inlet", bore);
    Require.given("needs of a pump", needs);
    Require.given("screen of a pump", screen);
  }

  /** An inlet without a cage that is known. */
  public PumpInlet(OptionalDouble elevationM, Optional<Bore> bore, SuctionNeeds needs) {
    this(elevationM, bore, needs, Optional.empty());
  }

  /** The same inlet of a pump whose data sheet asks for something else. */
  public PumpInlet withNeeds(SuctionNeeds others) {
    return new PumpInlet(elevationM, bore, others, screen);
  }
}
