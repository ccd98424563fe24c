package rillwright.solver.study.diagnosis.cause.kind;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Pump;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/**
 * Too little voltage at a running pump: a long cord, a thin wire. It slips more and turns slower;
 * power follows the affinity laws.
 *
 * <p>Source: the slip of an induction motor goes with 1/V² at one torque (textbook rule, from
 * memory); the slip at the rated voltage is a rough figure of ours for small motors.
 */
record LowVoltage() implements CauseKind {
  private static final double RATED_SLIP = 0.06;

  @Override
  public String name() {
    return "low voltage";
  }

  @Override
  public Quantity quantity() {
    return new Quantity("share of its speed left", "1", 0.5, 1);
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(SizeRange.even(0.90, 0.99));
  }

  @Override
  public double weight() {
    return 0.03;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    return Places.ofParts(job.network(), Places::isRunningPump).stream()
        .map(
            place ->
                new Site(
                    CauseId.at(name(), place),
                    (speed, altered) -> {
                      altered.supply(place.line(), voltageShare(speed));
                      altered.changePart(
                          place, Pump.class, pump -> pump.atSpeed(speed * pump.set().speed()));
                    }))
        .toList();
  }

  /** The share of the rated voltage at which a motor turns at a share of its speed. */
  static double voltageShare(double speed) {
    return Math.sqrt(RATED_SLIP / (1 - speed * (1 - RATED_SLIP)));
  }
}
