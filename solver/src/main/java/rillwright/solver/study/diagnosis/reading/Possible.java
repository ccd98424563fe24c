package rillwright.solver.study.diagnosis.reading;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import rillwright.solver.law.Gravity;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Tee;
import rillwright.solver.study.diagnosis.reading.Measurand.Teller;
import rillwright.solver.water.Atmosphere;

/**
 * What a reading can be at all, whatever is wrong with the job: no pressure above all pumps at no
 * flow upon the highest water, no flow above all pumps with nothing to lift, no power above the
 * sheet's largest, no level below a floor. What has no such bound is infinite. A pump may be a
 * fifth better than its sheet; common practice, no source.
 */
public final class Possible implements Teller<Span> {
  private static final double BETTER_THAN_ITS_SHEET = 1.2;
  private static final Span NOT_NEGATIVE = new Span(0, Double.POSITIVE_INFINITY);

  private final Network network;

  /** What is possible in a network. */
  public Possible(Network network) {
    this.network = network;
  }

  private List<Pump> pumps() {
    return network.placed(Pump.class).stream().map(Placed::part).toList();
  }

  private static List<Pump> pumpsOf(Line line) {
    return line.placed(Pump.class).stream().map(Placed::part).toList();
  }

  /** The highest level at which water can stand with the pumps off, m. */
  private double highestWaterM() {
    return network.points().stream().flatMapToDouble(Possible::highestM).max().orElse(0);
  }

  private static DoubleStream highestM(Point point) {
    if (point instanceof Basin basin) {
      double level = basin.levelM();
      return DoubleStream.of(level, basin.overflowM().orElse(level), basin.gradeM().orElse(level));
    }
    if (point instanceof Chamber chamber) {
      return chamber.topM().stream();
    }
    return point.spill().map(spill -> DoubleStream.of(spill.levelM())).orElse(DoubleStream.empty());
  }

  /** Flow out of the network is what its pumps can move, unless open water lies above the place. */
  private Span flowOutAt(double levelM) {
    boolean byLevelAlone =
        network.points().stream()
            .flatMapToDouble(point -> point.heldHeadM().stream())
            .anyMatch(held -> held > levelM);
    if (byLevelAlone || putsIn()) {
      return NOT_NEGATIVE;
    }
    double most = pumps().stream().mapToDouble(pump -> pump.set().publishedRangeM3PerS()).sum();
    return new Span(0, BETTER_THAN_ITS_SHEET * most);
  }

  private boolean putsIn() {
    return network.points().stream().anyMatch(point -> point.drawM3PerS() < 0);
  }

  private Span pressureAt(double elevationM) {
    double weight = network.water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
    double heads = pumps().stream().mapToDouble(pump -> pump.set().publishedShutOffHeadM()).sum();
    double most = highestWaterM() + BETTER_THAN_ITS_SHEET * heads - elevationM;
    return new Span(
        -Atmosphere.pressurePa(network.siteElevationM()),
        putsIn() ? Double.POSITIVE_INFINITY : weight * Math.max(0, most));
  }

  @Override
  public Span flow(Measurands.Flow flow) {
    Point point = network.point(flow.point());
    return point.spill().map(spill -> flowOutAt(spill.levelM())).orElse(NOT_NEGATIVE);
  }

  /** By the crest's law at the greatest flow, with the band within which such laws hold. */
  @Override
  public Span crestHead(Measurands.CrestHead head) {
    Fall fall = (Fall) network.point(head.fall());
    double most = flowOutAt(fall.crestM()).greatest();
    return Double.isInfinite(most)
        ? NOT_NEGATIVE
        : new Span(0, (1 + fall.depthBand()) * fall.weir().rulerHeadAt(most));
  }

  @Override
  public Span brink(Measurands.Brink brink) {
    Fall fall = (Fall) network.point(brink.fall());
    double most = flowOutAt(fall.crestM()).greatest();
    OptionalDouble depth =
        Double.isInfinite(most) ? OptionalDouble.empty() : fall.weir().brinkDepthAt(most);
    return depth.isPresent()
        ? new Span(0, (1 + fall.depthBand()) * depth.getAsDouble())
        : NOT_NEGATIVE;
  }

  @Override
  public Span teePressure(Measurands.TeePressure pressure) {
    Tee tee = (Tee) network.point(pressure.tee());
    return pressureAt(tee.elevationM().orElseThrow());
  }

  @Override
  public Span gaugePressure(Measurands.GaugePressure pressure) {
    double elevationM =
        network.placed(Gauge.class).stream()
            .map(Placed::part)
            .filter(gauge -> gauge.name().equals(pressure.gauge()))
            .mapToDouble(Gauge::elevationM)
            .findFirst()
            .orElseThrow();
    return pressureAt(elevationM);
  }

  /** A chamber's between its floor and the highest water; a basin's may be anything. */
  @Override
  public Span level(Measurands.Level level) {
    return network.point(level.point()) instanceof Chamber chamber
        ? Span.between(chamber.floorM(), Math.max(chamber.floorM(), highestWaterM()))
        : new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public Span power(Measurands.Power power) {
    double most = 0;
    for (Pump pump : pumpsOf(network.line(power.line()))) {
      OptionalDouble largest = pump.set().publishedLargestPowerW();
      most = largest.isPresent() ? most + largest.getAsDouble() : Double.POSITIVE_INFINITY;
    }
    return new Span(0, BETTER_THAN_ITS_SHEET * most);
  }

  /**
   * What flows within the job is bounded where it flows by pumps alone: from the lowest way out.
   */
  private Span flowWithin() {
    double lowest =
        network.points().stream()
            .flatMapToDouble(
                point ->
                    DoubleStream.concat(
                        point.heldHeadM().stream(),
                        point.spill().stream().mapToDouble(spill -> spill.levelM())))
            .min()
            .orElse(0);
    return flowOutAt(lowest);
  }

  @Override
  public Span lineFlow(LineFlow flow) {
    double most = flowWithin().greatest();
    return new Span(-most, most);
  }

  @Override
  public Span drawdown(Drawdown drawdown) {
    return flowWithin();
  }

  @Override
  public Span sight(Sight sight) {
    return new Span(0, 1);
  }

  @Override
  public Span meter(Meter meter) {
    return new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  @Override
  public Span levelBelow(LevelBelow level) {
    Chamber chamber = (Chamber) network.point(level.chamber());
    return new Span(Double.NEGATIVE_INFINITY, Math.max(0, highestWaterM() - chamber.floorM()));
  }
}
