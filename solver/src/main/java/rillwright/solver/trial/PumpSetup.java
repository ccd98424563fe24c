package rillwright.solver.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.pumping.HeadNeeded;

/**
 * A pump, or several alike, as they would be set up.
 *
 * @param offer which pump
 * @param count how many, 1 or more
 * @param arrangement how several stand
 * @param speed share of full speed, above 0
 */
public record PumpSetup(PumpOffer offer, int count, Arrangement arrangement, double speed) {
  private static final int PERCENT = 100;

  /** Share of a head by which rounding may make it look too small. */
  private static final double ROUNDING = 1e-9;

  /**
   * All of a pump: alone, several in parallel and, if it may stand so, in series, as near to full
   * speed as it goes.
   */
  public static List<PumpSetup> listOf(PumpOffer offer, int upTo) {
    double speed = offer.speeds().map(SpeedBand::nearestToFull).orElse(1.0);
    List<PumpSetup> setups = new ArrayList<>();
    setups.add(new PumpSetup(offer, 1, Arrangement.PARALLEL, speed));
    for (int count = 2; count <= upTo; count++) {
      setups.add(new PumpSetup(offer, count, Arrangement.PARALLEL, speed));
      if (offer.inSeries()) {
        setups.add(new PumpSetup(offer, count, Arrangement.SERIES, speed));
      }
    }
    return setups;
  }

  /** Curve, speed, count and arrangement as the balance knows them. */
  public PumpSet set(Optional<VelocityHeadLoss> runsBack) {
    return new PumpSet(offer.curve(), speed, count, arrangement, runsBack);
  }

  /** Price of all of them; empty if it is not known. */
  public OptionalDouble price() {
    return offer.price().isPresent()
        ? OptionalDouble.of(count * offer.price().getAsDouble())
        : OptionalDouble.empty();
  }

  /** The same at another speed. */
  public PumpSetup atSpeed(double otherSpeed) {
    return new PumpSetup(offer, count, arrangement, otherSpeed);
  }

  /**
   * The same at the least speed, in whole percents, at which it starts and gives a flow the head
   * that it needs; empty if its speed is fixed or none does.
   */
  public Optional<PumpSetup> slowestFor(HeadNeeded needed, Demand demand) {
    if (offer.speeds().isEmpty()) {
      return Optional.empty();
    }
    SpeedBand band = offer.speeds().get();
    int low = (int) Math.ceil(PERCENT * band.least() - ROUNDING);
    int high = (int) Math.floor(PERCENT * band.greatest() + ROUNDING);
    if (low > high || !gives(needed, demand, high)) {
      return Optional.empty();
    }
    while (low < high) {
      int middle = (low + high) / 2;
      if (gives(needed, demand, middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return Optional.of(atSpeed((double) high / PERCENT));
  }

  private boolean gives(HeadNeeded needed, Demand demand, int percent) {
    PumpSet set = atSpeed((double) percent / PERCENT).set(Optional.empty());
    double room = ROUNDING * Math.abs(needed.headM());
    return demand.isStartedBy(set) && set.headAt(needed.flowM3PerS()) >= needed.headM() - room;
  }
}
