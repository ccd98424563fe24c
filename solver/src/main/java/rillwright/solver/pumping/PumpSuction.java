package rillwright.solver.pumping;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.water.Atmosphere;

/** What a pump finds on its suction side while it runs. */
public final class PumpSuction {
  /** Source: ANSI/HI 9.8, S = D (1 + 2.3 F), F = v/√(g D), D and v at the inlet. */
  private static final double BY_FROUDE = 2.3;

  private final SteadyState state;
  private final Line line;
  private final int place;
  private final Pump pump;
  private final PartState part;

  private PumpSuction(SteadyState state, LineState line, int place) {
    this.state = state;
    this.line = line.line();
    this.place = place;
    this.part = line.parts().get(place);
    this.pump = (Pump) part.part();
  }

  /** Of each pump that runs. */
  public static List<PumpSuction> listRunning(SteadyState state) {
    return state.lines().stream()
        .filter(line -> line.flowM3PerS() > 0)
        .flatMap(
            line ->
                IntStream.range(0, line.parts().size())
                    .mapToObj(place -> of(state, line, place))
                    .flatMap(Optional::stream))
        .toList();
  }

  /** Of each pump that runs, unless the chamber that it draws from is drawn down to its intake. */
  public static List<PumpSuction> listFed(SteadyState state) {
    return listRunning(state).stream().filter(pump -> !pump.isStarved()).toList();
  }

  /** Of the pump at a place among the parts of a line; empty if there is none. */
  public static Optional<PumpSuction> of(SteadyState state, LineState line, int place) {
    return line.parts().get(place).part() instanceof Pump
        ? Optional.of(new PumpSuction(state, line, place))
        : Optional.empty();
  }

  /** Level of a pump's inlet, m: as the file says, else the intake of the chamber it stands in. */
  public static OptionalDouble elevationM(Network network, Line line, int place) {
    Pump pump = (Pump) line.parts().get(place);
    if (pump.inlet().elevationM().isPresent()) {
      return pump.inlet().elevationM();
    }
    return place == 0 && network.point(line.from()) instanceof Chamber chamber
        ? OptionalDouble.of(chamber.intakeM())
        : OptionalDouble.empty();
  }

  /**
   * Height over the water at rest, m, at which a pump or its suction pipe is filled by hand and
   * kept full by a check valve upstream of it; empty if it needs none of that or no height is
   * known.
   */
  public static OptionalDouble liftM(Network network, Line line, int place) {
    OptionalDouble level =
        network.point(line.from()) instanceof Basin basin
            ? OptionalDouble.of(basin.levelM())
            : network.point(line.from()) instanceof Chamber
                ? network.points(Basin.class).stream().mapToDouble(Basin::levelM).max()
                : OptionalDouble.empty();
    double climb = highestM(network, line, place) - level.orElse(Double.POSITIVE_INFINITY);
    Pump pump = (Pump) line.parts().get(place);
    return climb > pump.inlet().needs().selfPrimingM().orElse(0)
            && line.parts().stream().limit(place).anyMatch(CheckValve.class::isInstance)
            && line.parts().stream().limit(place).noneMatch(Pump.class::isInstance)
        ? OptionalDouble.of(climb)
        : OptionalDouble.empty();
  }

  private static double highestM(Network network, Line line, int place) {
    return DoubleStream.concat(
            elevationM(network, line, place).stream(),
            line.parts().stream()
                .limit(place)
                .filter(HighPoint.class::isInstance)
                .mapToDouble(part -> ((HighPoint) part).elevationM()))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private OptionalDouble elevationM() {
    return elevationM(state.network(), line, place);
  }

  private SuctionNeeds needs() {
    return pump.inlet().needs();
  }

  /**
   * Net positive suction head available, m: pressure of air less that of vapour, and head, over the
   * inlet; empty where its elevation or its head is not known.
   */
  public OptionalDouble npshAvailableM() {
    OptionalDouble elevation = elevationM();
    if (elevation.isEmpty() || part.headBeforeM().isEmpty()) {
      return OptionalDouble.empty();
    }
    Network network = state.network();
    double weight = network.water().densityKgPerM3() * Gravity.STANDARD_M_PER_S2;
    double air = Atmosphere.pressurePa(network.siteElevationM());
    return OptionalDouble.of(
        (air - network.water().vapourPressurePa()) / weight
            + part.headBeforeM().getAsDouble()
            + source().missingHeadM().orElse(0)
            - elevation.getAsDouble());
  }

  private PointState source() {
    return state.point(line.from());
  }

  /**
   * Head that its line takes up to its inlet, m; empty where it is not known, or where the line
   * does not begin in water.
   */
  public OptionalDouble lossBeforeM() {
    OptionalDouble level = source().headM();
    boolean inWater = source().point() instanceof Basin || source().point() instanceof Chamber;
    return inWater && level.isPresent() && part.headBeforeM().isPresent()
        ? OptionalDouble.of(level.getAsDouble() - part.headBeforeM().getAsDouble())
        : OptionalDouble.empty();
  }

  /** Whether the chamber that it draws from is drawn down to its intake. */
  public boolean isStarved() {
    return source().isStarved();
  }

  /** Net positive suction head that the data sheet asks for at the running flow, m; if it does. */
  public OptionalDouble npshRequiredM() {
    OptionalDouble byFlow = pump.set().npshRequiredAt(part.flowM3PerS());
    return byFlow.isPresent() ? byFlow : needs().npshRequiredM();
  }

  /** Whether the level of its inlet is known. */
  public boolean isInletKnown() {
    return elevationM().isPresent();
  }

  /** Whether water boils at its inlet: it finds less than its data sheet asks for. */
  public boolean boils() {
    return npshAvailableM().orElse(Double.POSITIVE_INFINITY) < npshRequiredM().orElse(0);
  }

  /** The line that it stands in. */
  public LineName line() {
    return line.name();
  }

  /** Depth of water over the inlet of a pump that stands in it, m; empty where not known. */
  public OptionalDouble depthM() {
    OptionalDouble level = source().headM();
    OptionalDouble elevation = elevationM();
    return place == 0 && level.isPresent() && elevation.isPresent()
        ? OptionalDouble.of(level.getAsDouble() - elevation.getAsDouble())
        : OptionalDouble.empty();
  }

  /** Whether the data sheet says how deep it must stand. */
  public boolean isDepthOnSheet() {
    return needs().minSubmergenceM().isPresent();
  }

  /** Depth over the inlet that keeps it from drawing air, m; empty where not known. */
  public OptionalDouble depthNeededM() {
    if (isDepthOnSheet()) {
      return needs().minSubmergenceM();
    }
    Optional<Bore> bore = pump.inlet().bore().or(line::mainBore);
    double flow = pump.set().flowOfOne(part.flowM3PerS());
    return bore.map(
            inlet ->
                OptionalDouble.of(inlet.diameterM() * (1 + BY_FROUDE * inlet.froudeNumberAt(flow))))
        .orElse(OptionalDouble.empty());
  }

  /**
   * Height over the water to which it must be primed and is not, m: it stands, or its pipe climbs,
   * above the water that feeds it, without a check valve upstream of it and farther than it primes
   * itself; empty if it needs nothing or that is not known.
   */
  public OptionalDouble unprimedM() {
    OptionalDouble level = source().headM();
    boolean held =
        line.parts().stream()
            .limit(place)
            .anyMatch(upstream -> upstream instanceof CheckValve || upstream instanceof Pump);
    double climb = highestM(state.network(), line, place) - level.orElse(Double.POSITIVE_INFINITY);
    return climb > 0 && !held && climb > needs().selfPrimingM().orElse(0)
        ? OptionalDouble.of(climb)
        : OptionalDouble.empty();
  }
}
