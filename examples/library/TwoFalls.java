import java.util.List;
import java.util.Locale;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Network;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Two falls off one pump, by the solver as a library. All values are invented. */
public final class TwoFalls {
  private TwoFalls() {}

  public static void main(String[] args) {
    PumpCurve curve =
        new PumpCurve(
            List.of(new PumpPoint(0, 6.7), new PumpPoint(0.003, 5), new PumpPoint(0.006, 0)));
    Pipe wide = Pipe.of(0.0525, 1.5e-6);
    Pipe narrow = Pipe.of(0.0409, 1.5e-6);
    Network network =
        new NetworkBuilder()
            .basin("pond", 0)
            .tee("split", -0.4)
            .fall("upper fall", 2.2, new PowerWeir(1.60, 0.75, BrinkRule.FREE_OVERFALL), 0.002)
            .fall("side fall", 1.2, new PowerWeir(1.84, 0.45, BrinkRule.THIN_EDGE))
            .line(
                "supply",
                "pond",
                "split",
                LineParts.in(wide)
                    .pump("P-180", curve)
                    .checkValve(2)
                    .run(11.6)
                    .fittings("elbow 90", 3, 0.57))
            .line("upper", "split", "upper fall", LineParts.in(wide).run(19.5))
            .line(
                "side",
                "split",
                "side fall",
                LineParts.in(narrow).run(3.7).valve(ValveTravel.BALL, 0.6))
            .build();

    SteadyState state = SteadyStateFinder.find(network);
    state.points().stream()
        .filter(point -> point.point().spill().isPresent())
        .forEach(
            point ->
                System.out.printf(
                    Locale.ROOT,
                    "%-10s %.2f L/s%s%n",
                    point.point().name(),
                    1000 * point.outflowM3PerS(),
                    point.isUnderTarget() ? ", below its target" : ""));
  }
}
