package rillwright.solver.pumping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.finding.Figure;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Findings;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Basin;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.PumpInlet;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.water.Water;

/** A pump that draws from a pond at level 0, worked by hand. */
class PumpSuctionTest {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
  private static final Bore BORE = new Bore(0.1);

  /** Takes 0.5 m of head at the 10 L/s that the pump gives against nothing. */
  private static final Part SUCTION_PIPE = new Loss(new PowerLoss(0.5, 0.01, 2), Optional.empty());

  private static Pump pump(OptionalDouble elevationM, SuctionNeeds needs, OptionalDouble npshr) {
    PumpCurve curve =
        new PumpCurve(
            List.of(new PumpPoint(0, 20, UNKNOWN, npshr), new PumpPoint(0.02, 0, UNKNOWN, npshr)));
    return new Pump(
        "p",
        new PumpSet(curve, 1, 1, PumpSet.Arrangement.PARALLEL, Optional.empty()),
        new PumpInlet(elevationM, Optional.of(BORE), needs));
  }

  private static Pump pump(double elevationM) {
    return pump(OptionalDouble.of(elevationM), SuctionNeeds.NONE, UNKNOWN);
  }

  private static SuctionNeeds needs(double submergence, double npshr, double priming) {
    return new SuctionNeeds(of(submergence), of(npshr), of(priming));
  }

  private static OptionalDouble of(double value) {
    return value < 0 ? UNKNOWN : OptionalDouble.of(value);
  }

  /** The outlet lies so that 10 L/s run, at which the pump gives 10 m. */
  private static SteadyState state(double celsius, double siteM, Part... parts) {
    PointName pond = new PointName("pond");
    PointName end = new PointName("end");
    boolean pipe = List.of(parts).contains(SUCTION_PIPE);
    LineEnd free = new LineEnd(EndLoss.NONE, Optional.empty());
    Line line =
        new Line(new LineName("up"), pond, end, Optional.of(BORE), List.of(parts), free, free);
    return SteadyStateFinder.find(
        new Network(
            Water.at(celsius),
            siteM,
            List.of(
                new Basin(pond, 0, Optional.empty(), UNKNOWN, UNKNOWN, UNKNOWN),
                new Outlet(end, pipe ? 9.5 : 10, UNKNOWN, Optional.empty(), UNKNOWN)),
            List.of(line)));
  }

  private static PumpSuction suction(SteadyState state, int place) {
    return PumpSuction.of(state, state.line(new LineName("up")), place).orElseThrow();
  }

  private static List<String> codes(SteadyState state) {
    List<String> codes = new ArrayList<>();
    Findings.of(state).stream().map(Finding::code).forEach(codes::add);
    return codes;
  }

  /**
   * (air − vapour) / (density × g) − lift − loss. Air: U.S. Standard Atmosphere, 1976, 101,325 Pa
   * at 0 m; at 2,200 m 77,548 Pa by its formula, worked by hand. Vapour: steam tables, 2,339 Pa at
   * 20 °C, 5,628 Pa at 35 °C (from memory). Density 998.2 and 994.0 kg/m³.
   */
  @ParameterizedTest
  @CsvSource({"20, 0, 101325, 2339, 998.2", "35, 2200, 77548, 5628, 994.0"})
  void netPositiveSuctionHead(
      double celsius, double siteM, double airPa, double vapourPa, double density) {
    SteadyState state = state(celsius, siteM, SUCTION_PIPE, pump(3));
    double expected = (airPa - vapourPa) / (density * 9.80665) - 3 - 0.5;
    assertEquals(0.01, state.line(new LineName("up")).flowM3PerS(), 1e-9);
    assertEquals(expected, suction(state, 1).npshAvailableM().getAsDouble(), 2e-3);
  }

  /** At 2,200 m and 35 °C 7.38 m less 3.5 m are left: 3.88 m; a tenth of 3.4 m is less than 0.6. */
  @ParameterizedTest
  @CsvSource({"3.4, npsh-short", "3.2, ''", "-1, npsh-low"})
  void toHighAndWarmIsFoundWithoutAHighPoint(double required, String code) {
    Pump pump = pump(OptionalDouble.of(3), needs(-1, required, 5), UNKNOWN);
    List<String> codes = codes(state(35, 2200, SUCTION_PIPE, pump));
    assertEquals(code, codes.stream().filter(c -> c.startsWith("npsh")).findFirst().orElse(""));
  }

  /**
   * 2.5 m up at 20 °C 10.112 - 2.5 - 0.5 = 7.112 m are left: of 6.5 m a tenth is more than 0.6 m
   * and 7.15 m are too much; of 6.4 m it makes 7.04 m.
   */
  @ParameterizedTest
  @CsvSource({"6.5, true", "6.4, false"})
  void aTenthCountsWhereItIsMoreThanTheLeastMargin(double required, boolean found) {
    Pump pump = pump(OptionalDouble.of(2.5), needs(-1, required, 5), UNKNOWN);
    assertEquals(found, codes(state(20, 0, SUCTION_PIPE, pump)).contains("npsh-short"));
  }

  /** The pipe takes 0.5 m: it may make up for 0.12 m that is lacking, not for 0.62 m. */
  @ParameterizedTest
  @CsvSource({"3.4, false", "3.9, true"})
  void aWiderPipeIsNamedWhereItMayBeEnough(double required, boolean onlyLower) {
    Pump pump = pump(OptionalDouble.of(3), needs(-1, required, 5), UNKNOWN);
    Finding found =
        Findings.of(state(35, 2200, SUCTION_PIPE, pump)).stream()
            .filter(it -> it.code().equals("npsh-short"))
            .findFirst()
            .orElseThrow();
    List<Double> lackingM =
        found.figures().stream()
            .filter(it -> it.name().equals("lacking"))
            .map(Figure::value)
            .toList();
    assertEquals(onlyLower ? 1 : 0, lackingM.size());
    lackingM.forEach(it -> assertEquals(0.62, it, 5e-3));
  }

  /** A column counts before the sheet's one figure, and by the square of the speed. */
  @Test
  void theColumnCountsAtTheRunningFlow() {
    Pump pump = pump(OptionalDouble.of(3), needs(-1, 1, -1), OptionalDouble.of(2.5));
    SteadyState state = state(20, 0, SUCTION_PIPE, pump);
    assertEquals(2.5, suction(state, 1).npshRequiredM().getAsDouble(), 1e-12);
    assertEquals(2.5 / 4, pump.atSpeed(0.5).set().npshRequiredAt(0.003).getAsDouble(), 1e-12);
  }

  @Test
  void withoutAnElevationItIsNotGiven() {
    SteadyState state = state(20, 0, SUCTION_PIPE, pump(UNKNOWN, SuctionNeeds.NONE, UNKNOWN));
    assertTrue(suction(state, 1).npshAvailableM().isEmpty());
  }

  /** D (1 + 2.3 v/√(g D)), ANSI/HI 9.8: 10 L/s in 100 mm are 1.273 m/s, so 0.396 m. */
  @ParameterizedTest
  @CsvSource({"-0.39, -1, true", "-0.40, -1, false", "-0.40, 0.5, true", "-0.2, 0.1, false"})
  void submergence(double elevationM, double bySheetM, boolean low) {
    Pump pump = pump(OptionalDouble.of(elevationM), needs(bySheetM, -1, -1), UNKNOWN);
    SteadyState state = state(20, 0, pump);
    assertEquals(low, codes(state).contains("low-submergence"));
    double needed = bySheetM < 0 ? 0.3957 : bySheetM;
    assertEquals(needed, suction(state, 0).depthNeededM().getAsDouble(), 5e-4);
  }

  /** Above the water it needs a prime: a check valve before it, or priming itself from there. */
  @Test
  void priming() {
    assertTrue(codes(state(20, 0, SUCTION_PIPE, pump(1))).contains("not-primed"));
    assertTrue(!codes(state(20, 0, SUCTION_PIPE, pump(-1))).contains("not-primed"));
    CheckValve foot = new CheckValve("foot valve", 0, 0, BORE);
    assertTrue(!codes(state(20, 0, foot, SUCTION_PIPE, pump(1))).contains("not-primed"));
    assertTrue(codes(state(20, 0, foot, SUCTION_PIPE, pump(1))).contains("suction-lift"));
    assertTrue(!codes(state(20, 0, foot, SUCTION_PIPE, pump(-1))).contains("suction-lift"));
    assertTrue(!codes(state(20, 0, SUCTION_PIPE, pump(1))).contains("suction-lift"));
    HighPoint hump = new HighPoint(1.5, Optional.of(BORE));
    Pump priming = pump(OptionalDouble.of(1), needs(-1, -1, 1.2), UNKNOWN);
    assertTrue(!codes(state(20, 0, SUCTION_PIPE, priming)).contains("not-primed"));
    assertTrue(codes(state(20, 0, hump, SUCTION_PIPE, priming)).contains("not-primed"));
    assertTrue(codes(state(20, 0, hump, SUCTION_PIPE, pump(-1))).contains("not-primed"));
  }
}
