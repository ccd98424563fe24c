package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static rillwright.solver.steady.PublishedCase.CFS;
import static rillwright.solver.steady.PublishedCase.FT;
import static rillwright.solver.steady.PublishedCase.GPM;
import static rillwright.solver.steady.PublishedCase.IN;
import static rillwright.solver.steady.PublishedCase.head;
import static rillwright.solver.steady.PublishedCase.speed;
import static rillwright.solver.steady.Sketch.fitting;
import static rillwright.solver.steady.Sketch.pipe;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Friction;

/** Heads that a given flow needs, from textbooks: the flow is put in at a tee. */
class PublishedHeadsNeededTest {
  private static final EndLoss EXIT = EndLoss.bothWays(1);

  @ParameterizedTest(name = "{0}")
  @MethodSource("headsNeeded")
  void agreesWithItsSource(PublishedCase published) {
    published.check();
  }

  static Stream<PublishedCase> headsNeeded() {
    double fullyRough = 0.0175;
    return Stream.of(
        new PublishedCase(
                "Crane, Technical Paper 410, ex. 7.15, as transcribed",
                pushed(100 * GPM, 400 * FT)
                    .line(
                        "line",
                        "start",
                        "top",
                        EndLoss.NONE,
                        EXIT,
                        pipe(500 * FT, 3.068 * IN, 0.0205),
                        fitting(4 * 30 * fullyRough, 3.068 * IN),
                        fitting(8 * fullyRough, 3.068 * IN),
                        fitting(600 * fullyRough, 2.469 * IN)))
            .prints("head", head("start", FT), 421, 1)
            .prints("hp", s -> horsepower(Sketch.head(s, "start")), 15.2, 0.1),
        new PublishedCase(
                "Fox and McDonald, Introduction to Fluid Mechanics, ex. 5, p. 352 (g = 9.8 m/s²), as"
                    + " transcribed",
                pushed(8.4e-3, 0)
                    .line(
                        "line",
                        "start",
                        "top",
                        EndLoss.bothWays(0.5),
                        EXIT,
                        pipe(100, 0.075, 0.017)))
            .prints("head", head("start", 1), 4.46, 0.01),
        new PublishedCase(
                "Khan, Fluid Mechanics, ex. 9.1, p. 308 (by chart), as transcribed",
                pushed(0.1, 0)
                    .viscosity(1.007e-6)
                    .line("line", "start", "top", pipe(100, 0.2, new Friction.Roughness(0.25e-3))))
            .prints("head", head("start", 1), 5.42, 0.01 * 5.42));
  }

  /** Shaft power at 100 gpm of water of 62.298 lb/ft³ and 70 %, hp of 550 ft·lb/s. */
  private static double horsepower(double headM) {
    return 100 * GPM / CFS * 62.298 * headM / FT / 550 / 0.7;
  }

  /** Hydraulic Institute, Engineering Data Book, system curves, worked example. */
  @ParameterizedTest(name = "{0} gpm need {1} ft")
  @CsvSource({"0, 265", "100, 273", "200, 296", "300, 335"})
  void systemHeadOfTheEngineeringDataBook(double gpm, double headFt) {
    SteadyState state =
        pushed(gpm * GPM, 265 * FT)
            .line(
                "line",
                "start",
                "top",
                pipe(1255 * FT, 4.026 * IN, 0.02),
                fitting(2 * 0.31 + 2.0 + 0.17 + 1.0, 4.026 * IN))
            .solve();
    assertEquals(headFt, head("start", FT).applyAsDouble(state), 0.5);
    if (gpm == 200) {
      assertEquals(5.04, speed("line", FT).applyAsDouble(state), 0.005);
    }
  }

  private static Sketch pushed(double flowM3PerS, double headM) {
    return new Sketch().basin("top", headM).tee("start", -flowM3PerS);
  }
}
