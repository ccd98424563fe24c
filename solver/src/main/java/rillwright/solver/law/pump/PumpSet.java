package rillwright.solver.law.pump;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.minor.VelocityHeadLoss;

/**
 * One pump or several alike, at a speed: head = n² H₁(Q/n), power = n³ P₁(Q/n); in parallel each
 * carries its share of the flow, in series each gives its head at all of it.
 *
 * <p>A pump lets no water back unless {@code runsBack} says how: then its first slope goes on below
 * no flow and the loss is added.
 *
 * <p>Source: the affinity laws, e.g. Hydraulic Institute, Engineering Data Book, section I, Pump
 * fundamentals.
 *
 * @param curve of one pump at full speed
 * @param speed n, share of full speed, 0 or more; 0 is stopped
 * @param count how many, 1 or more
 * @param arrangement how several stand
 * @param runsBack loss of water that runs back through one of them
 */
public record PumpSet(
    PumpCurve curve,
    double speed,
    int count,
    Arrangement arrangement,
    Optional<VelocityHeadLoss> runsBack)
    implements HeadLaw {

  /** How several pumps stand. */
  public enum Arrangement {
    /** Side by side: flows add. */
    PARALLEL,
    /** In series: heads add. */
    SERIES
  }

  public PumpSet {
    Require.given("curve of the pump", curve);
    Require.atLeast("speed of the pump", speed, 0, "");
    Require.atLeast("count of pumps", count, 1);
    Require.given("arrangement of the pumps", arrangement);
    Require.given("loss of water that runs back", runsBack);
  }

  private boolean stopped() {
    return speed == 0;
  }

  /** What one of them carries of a flow, m³/s. */
  public double flowOfOne(double flowM3PerS) {
    return arrangement == Arrangement.PARALLEL ? flowM3PerS / count : flowM3PerS;
  }

  private int headsAdded() {
    return arrangement == Arrangement.SERIES ? count : 1;
  }

  /** Head given at a flow, m. */
  public double headAt(double flowM3PerS) {
    double flow = flowOfOne(flowM3PerS);
    return headsAdded() * (ownHeadAt(flow) - lossAt(flow));
  }

  private double ownHeadAt(double flow) {
    if (stopped()) {
      return 0;
    }
    if (flow < 0) {
      return speed * (speed * curve.headAt(0) + curve.headSlopeAt(0) * flow);
    }
    return speed * speed * curve.headAt(flow / speed);
  }

  private double lossAt(double flow) {
    boolean lossy = flow < 0 || stopped();
    return lossy ? runsBack.map(loss -> loss.headLossAt(flow)).orElse(0.0) : 0;
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return 0 - headAt(flowM3PerS); // and so never minus nothing
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    double flow = flowOfOne(flowM3PerS);
    double own = stopped() ? 0 : -speed * curve.headSlopeAt(Math.max(0, flow) / speed);
    boolean lossy = flow < 0 || stopped();
    double loss = lossy ? runsBack.map(law -> law.slopeAt(flow)).orElse(0.0) : 0;
    double shareOfFlow = arrangement == Arrangement.PARALLEL ? 1.0 / count : 1;
    return headsAdded() * (own + loss) * shareOfFlow;
  }

  @Override
  public double leastFlow() {
    return runsBack.isPresent() ? Double.NEGATIVE_INFINITY : 0;
  }

  @Override
  public double greatestFlow() {
    return stopped() && runsBack.isEmpty() ? 0 : Double.POSITIVE_INFINITY;
  }

  /** Electrical power of all together at a flow, W; empty if the sheet gives none. */
  public OptionalDouble powerAt(double flowM3PerS) {
    if (stopped()) {
      return OptionalDouble.of(0);
    }
    OptionalDouble one = curve.powerAt(Math.max(0, flowOfOne(flowM3PerS)) / speed);
    return one.isPresent()
        ? OptionalDouble.of(count * speed * speed * speed * one.getAsDouble())
        : one;
  }

  /**
   * Net positive suction head required at a flow, m, by the affinity laws; empty if the sheet gives
   * no column of it.
   */
  public OptionalDouble npshRequiredAt(double flowM3PerS) {
    if (stopped()) {
      return OptionalDouble.empty();
    }
    OptionalDouble one = curve.npshRequiredAt(Math.max(0, flowOfOne(flowM3PerS)) / speed);
    return one.isPresent() ? OptionalDouble.of(speed * speed * one.getAsDouble()) : one;
  }

  /** The largest power of the data sheet, W, of all together; empty if the sheet gives none. */
  public OptionalDouble publishedLargestPowerW() {
    return curve.points().stream()
        .flatMapToDouble(point -> point.powerW().stream())
        .map(power -> count * speed * speed * speed * power)
        .max();
  }

  /** Head at no flow, m, as published (a hump not levelled). */
  public double publishedShutOffHeadM() {
    return headsAdded() * speed * speed * curve.publishedShutOffHeadM();
  }

  /** Flow at the end of the published curve, m³/s. */
  public double publishedRangeM3PerS() {
    int sharing = arrangement == Arrangement.PARALLEL ? count : 1;
    return sharing * speed * curve.lastFlowM3PerS();
  }
}
