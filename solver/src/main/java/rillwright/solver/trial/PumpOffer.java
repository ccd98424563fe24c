package rillwright.solver.trial;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.pump.PumpCurve;

/**
 * A pump that can be had.
 *
 * @param model its name
 * @param curve head and power of one at full speed
 * @param speeds at which it may run; empty if only at full speed
 * @param price of one, in the currency of all prices, where known
 * @param minSubmergenceM least depth of water over its inlet, m, where known
 */
public record PumpOffer(
    String model,
    PumpCurve curve,
    Optional<SpeedBand> speeds,
    OptionalDouble price,
    OptionalDouble minSubmergenceM) {}
