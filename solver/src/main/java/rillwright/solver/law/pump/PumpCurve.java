package rillwright.solver.law.pump;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.curve.MonotoneCubic;
import rillwright.solver.law.curve.MonotoneCubic.EndSlopes;
import rillwright.solver.law.curve.MonotoneCubic.Knot;

/**
 * Head and power of one pump at full speed, through the points of its data sheet.
 *
 * <p>A shape-preserving cubic (see {@link MonotoneCubic}) joins the points; past the last one the
 * last slope goes on. A hump is levelled from the last point to the first: a head not greater than
 * the one after it becomes that plus 0.1 % of the shut-off head, so that the curve falls
 * throughout.
 */
public final class PumpCurve {
  private static final double LEVELLING_SHARE = 0.001;

  private final List<PumpPoint> points;
  private final boolean levelled;
  private final double publishedShutOffHeadM;
  private final MonotoneCubic head;
  private final Optional<MonotoneCubic> power;
  private final Optional<MonotoneCubic> npshRequired;

  /**
   * The curve of a data sheet.
   *
   * @param points two or more, flows strictly rising; the last head is below the first
   * @throws IllegalArgumentException otherwise
   */
  public PumpCurve(List<PumpPoint> points) {
    this.points = Require.all("points of a pump's curve", points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a pump's curve needs two points or more");
    }
    PumpPoint last = points.get(points.size() - 1);
    if (!(last.headM() < points.get(0).headM())) {
      throw new IllegalArgumentException("the last head of a pump's curve is not below its first");
    }
    double[] heads = points.stream().mapToDouble(PumpPoint::headM).toArray();
    MonotoneCubic published = curveThrough(heads);
    this.publishedShutOffHeadM = published.valueAt(0);
    this.levelled = level(heads);
    this.head = levelled ? curveThrough(heads) : published;
    this.power = through(PumpPoint::powerW);
    this.npshRequired = through(PumpPoint::npshRequiredM);
  }

  private MonotoneCubic curveThrough(double[] heads) {
    List<Knot> knots = new ArrayList<>();
    for (int i = 0; i < heads.length; i++) {
      knots.add(new Knot(points.get(i).flowM3PerS(), heads[i]));
    }
    return curveThrough(knots);
  }

  private Optional<MonotoneCubic> through(Function<PumpPoint, OptionalDouble> column) {
    List<Knot> knots = new ArrayList<>();
    for (PumpPoint point : points) {
      column.apply(point).ifPresent(value -> knots.add(new Knot(point.flowM3PerS(), value)));
    }
    return knots.size() < 2 ? Optional.empty() : Optional.of(curveThrough(knots));
  }

  private static MonotoneCubic curveThrough(List<Knot> knots) {
    boolean fromZero = knots.get(0).x() == 0;
    return MonotoneCubic.through(
        knots, fromZero ? EndSlopes.STEEP_AT_LAST : EndSlopes.STEEP_AT_BOTH);
  }

  private static boolean level(double[] heads) {
    double step = LEVELLING_SHARE * heads[0];
    boolean changed = false;
    for (int i = heads.length - 2; i >= 0; i--) {
      if (heads[i] <= heads[i + 1]) {
        heads[i] = heads[i + 1] + step;
        changed = true;
      }
    }
    return changed;
  }

  /** The points as published. */
  public List<PumpPoint> points() {
    return points;
  }

  /** Whether a hump had to be levelled. */
  public boolean isLevelled() {
    return levelled;
  }

  /** Head at a flow, m; negative past the flow at which the pump gives none. */
  public double headAt(double flowM3PerS) {
    return head.valueAt(flowM3PerS);
  }

  /** dH/dQ at a flow, s/m², 0 or negative. */
  public double headSlopeAt(double flowM3PerS) {
    return head.slopeAt(flowM3PerS);
  }

  /** Electrical power at a flow, W, 0 or more; empty if the sheet gives none. */
  public OptionalDouble powerAt(double flowM3PerS) {
    return power
        .map(curve -> OptionalDouble.of(Math.max(0, curve.valueAt(flowM3PerS))))
        .orElse(OptionalDouble.empty());
  }

  /** Net positive suction head required at a flow, m, 0 or more; empty if the sheet gives none. */
  public OptionalDouble npshRequiredAt(double flowM3PerS) {
    return npshRequired
        .map(curve -> OptionalDouble.of(Math.max(0, curve.valueAt(flowM3PerS))))
        .orElse(OptionalDouble.empty());
  }

  /**
   * The published head at no flow, m; where the sheet begins later, the first slope of the curve
   * through the published points, not levelled, goes on to it.
   */
  public double publishedShutOffHeadM() {
    return publishedShutOffHeadM;
  }

  /** Greatest flow of the data sheet, m³/s. */
  public double lastFlowM3PerS() {
    return head.lastX();
  }
}
