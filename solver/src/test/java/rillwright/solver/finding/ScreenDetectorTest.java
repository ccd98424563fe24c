package rillwright.solver.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Basin;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.PumpInlet;
import rillwright.solver.network.Screen;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.water.Water;

/** Two pumps side by side give 10 L/s together against 10 m: speeds through screens by hand. */
class ScreenDetectorTest {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
  private static final Optional<Bore> BORE = Optional.of(new Bore(0.1));

  private static List<String> codes(Optional<Screen> entrance, Optional<Screen> cage) {
    PumpCurve curve =
        new PumpCurve(List.of(new PumpPoint(0, 20, UNKNOWN), new PumpPoint(0.01, 0, UNKNOWN)));
    Pump pumps =
        new Pump(
            "p",
            new PumpSet(curve, 1, 2, PumpSet.Arrangement.PARALLEL, Optional.empty()),
            new PumpInlet(OptionalDouble.of(-2), BORE, SuctionNeeds.NONE, cage));
    PointName pond = new PointName("pond");
    PointName end = new PointName("end");
    Line line =
        new Line(
            new LineName("up"),
            pond,
            end,
            BORE,
            List.of(pumps, new Loss(new PowerLoss(1, 0.01, 2), Optional.empty())),
            new LineEnd(EndLoss.NONE, BORE, entrance),
            new LineEnd(EndLoss.NONE, Optional.empty()));
    SteadyState state =
        SteadyStateFinder.find(
            new Network(
                Water.at(20),
                0,
                List.of(
                    new Basin(pond, 0, Optional.empty(), UNKNOWN, UNKNOWN, UNKNOWN),
                    new Outlet(end, 9, UNKNOWN, Optional.empty(), UNKNOWN)),
                List.of(line)));
    assertEquals(0.01, state.line(new LineName("up")).flowM3PerS(), 1e-9);
    return new ScreenDetector()
        .findIn(state).stream().map(finding -> finding.code().substring(7)).toList();
  }

  /**
   * 10 L/s over the gross area: 0.0599 and 0.0606 m/s about 0.06 (NMFS addendum, 0.2 ft/s); through
   * holes 0.455 and 0.476 m/s about 0.46 (Nevada Administrative Code 444.158, 1.5 ft/s).
   */
  @ParameterizedTest
  @CsvSource({
    "0.167, 0.5, ''",
    "0.165, 0.5, fast",
    "0.1, 0.22, fast",
    "0.1, 0.21, holds-people fast"
  })
  void speedOfAllWaterThroughAnEntrance(double areaM2, double open, String found) {
    Optional<Screen> screen = Optional.of(new Screen(areaM2, open));
    assertEquals(found, String.join(" ", codes(screen, Optional.empty())));
  }

  /** Each pump has its own cage, and half of the flow. */
  @ParameterizedTest
  @CsvSource({"0.0835, 0.5, ''", "0.0825, 0.5, fast", "0.05, 0.21, holds-people fast"})
  void speedOfOnePumpsWaterThroughItsCage(double areaM2, double open, String found) {
    Optional<Screen> cage = Optional.of(new Screen(areaM2, open));
    assertEquals(found, String.join(" ", codes(Optional.empty(), cage)));
  }
}
