package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rillwright.solver.steady.Sketch.fitting;
import static rillwright.solver.steady.Sketch.pipe;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;

/** Published work with the same networks: valves that share out a flow, losses at given flows. */
class PublishedValveSettingTest {

  /**
   * Subramanya, 1000 Solved Problems in Fluid Mechanics, ex. 11.9, p. 243, and Natarajan,
   * Principles of Fluid Mechanics, ex. 7.16, p. 280, both as transcribed: the K of a valve in the
   * wider of two parallel pipes at which both carry the same.
   */
  @ParameterizedTest(name = "K = {5}")
  @CsvSource({"150, 0.15, 100, 0.12, 0.018, 18.62, 0.01", "20, 0.1, 20, 0.05, 0.02, 124, 0.5"})
  void valveForEqualFlowInTwoPipes(
      double wideLength,
      double wideBore,
      double narrowLength,
      double narrowBore,
      double factor,
      double k,
      double tolerance) {
    double low = 0;
    double high = 1000;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      SteadyState state =
          new Sketch()
              .basin("upper", 10)
              .basin("lower", 0)
              .tee("end")
              .line(
                  "wide",
                  "upper",
                  "end",
                  pipe(wideLength, wideBore, factor),
                  fitting(middle, wideBore))
              .line("narrow", "upper", "end", pipe(narrowLength, narrowBore, factor))
              .line("rest", "end", "lower", pipe(10, 0.1, factor))
              .solve();
      boolean carriesMore = Sketch.flow(state, "wide") > Sketch.flow(state, "narrow");
      low = carriesMore ? middle : low;
      high = carriesMore ? high : middle;
    }
    assertEquals(k, high, tolerance);
  }

  /**
   * Pipe Network Analysis, worked sheet of 17 December 2015: losses of its first iteration, cast
   * iron of 0.26 mm, ν = 1e-6 m²/s. The sheet's factor is 0.3 to 0.7 % higher than Colebrook's.
   */
  @ParameterizedTest(name = "{0} m of {1} m bore lose {3} m at {2} m³/s")
  @CsvSource({
    "300, 0.30, 0.20, 7.95",
    "250, 0.25, 0.10, 4.34",
    "350, 0.20, 0.08, 12.47",
    "125, 0.20, 0.12, 9.94",
    "350, 0.20, 0.07, 9.58",
    "125, 0.20, 0.03, 0.65",
    "300, 0.20, 0.10, 16.62",
    "125, 0.15, 0.05, 7.87",
    "350, 0.20, 0.05, 4.94",
    "125, 0.15, 0.10, 31.11"
  })
  void lossesOfTheTenPipesAtTheirFirstFlows(double length, double bore, double flow, double loss) {
    Part part = LoopedNetworks.castIron(length, bore);
    SteadyState state =
        new Sketch()
            .viscosity(1e-6)
            .basin("end", 0)
            .tee("start", -flow)
            .line("line", "start", "end", part)
            .solve();
    assertEquals(loss, Sketch.head(state, "start"), Math.max(0.01 * loss, 0.01));
  }

  /** What the two tests above rest on: a pushed flow is carried to the last digit. */
  @Test
  void whatIsPutInComesOut() {
    Network network =
        new Sketch()
            .basin("end", 0)
            .tee("start", -0.1)
            .line("line", "start", "end", LoopedNetworks.castIron(100, 0.2))
            .network();
    assertEquals(0.1, Sketch.outflow(SteadyStateFinder.find(network), "end"), 1e-15);
  }
}
