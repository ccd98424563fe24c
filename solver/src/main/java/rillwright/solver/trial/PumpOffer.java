package rillwright.solver.trial;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.SuctionNeeds;

/**
 * A pump that can be had.
 *
 * @param model its name
 * @param curve head and power of one at full speed
 * @param speeds at which it may run; empty if only at full speed
 * @param price of one, in the currency of all prices, where known
 * @param needs what its data sheet asks of the water at its inlet
 * @param inSeries whether one may pump into the next
 */
public record PumpOffer(
    String model,
    PumpCurve curve,
    Optional<SpeedBand> speeds,
    OptionalDouble price,
    SuctionNeeds needs,
    boolean inSeries) {}
