package rillwright.solver.steady;

import static rillwright.solver.steady.PublishedCase.CFS;
import static rillwright.solver.steady.PublishedCase.FT;
import static rillwright.solver.steady.PublishedCase.IN;
import static rillwright.solver.steady.PublishedCase.head;
import static rillwright.solver.steady.PublishedCase.loss;
import static rillwright.solver.steady.Sketch.fitting;
import static rillwright.solver.steady.Sketch.neglected;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.quadratic;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Part;

/**
 * Networks without pumps from textbooks and lecture sheets. "As transcribed" is a textbook's
 * example in a published companion, whose page was not seen. Sources with g = 32.2 ft/s² or 9.81
 * m/s² differ from ours by 0.04 % in flow at most, which their tolerances cover.
 */
class PublishedNetworksTest {
  private static final EndLoss ENTRANCE = EndLoss.bothWays(0.5);
  private static final EndLoss EXIT = EndLoss.bothWays(1);
  private static final double PER_HOUR = 1.0 / 3600;

  @ParameterizedTest(name = "{0}")
  @MethodSource({"reservoirs", "series", "parallel", "loops"})
  void agreesWithItsSource(PublishedCase published) {
    published.check();
  }

  static Stream<PublishedCase> reservoirs() {
    return Stream.of(
        new PublishedCase(
                "Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, ex. 8.14, p. 462,"
                    + " three reservoirs, as transcribed",
                threeReservoirs())
            .printsFlow("A", CFS, 12.5, 0.005 * 12.5)
            .printsFlow("B", CFS, 2.26, 0.02 * 2.26)
            .printsFlow("C", CFS, 10.3, 0.005 * 10.3)
            .computed("junction", head("J", FT), 21.255, 0.001),
        new PublishedCase(
                "the same with a check valve that lets nothing into B",
                threeReservoirs(new CheckValve("check", 0, 0, new Bore(FT)), "B", "J"))
            .computedFlow("B", CFS, 0, 0)
            .computedFlow("A", CFS, 11.911, 0.001 * 11.911)
            .computedFlow("C", CFS, 11.911, 0.001 * 11.911)
            .computed("junction", head("J", FT), 28.571, 0.001),
        new PublishedCase(
                "the same with the check valve the other way",
                threeReservoirs(new CheckValve("check", 0, 0, new Bore(FT)), "J", "B"))
            .computedFlow("B", CFS, 2.233, 0.002)
            .computed("junction", head("J", FT), 21.255, 0.001),
        new PublishedCase(
                "Khan, Fluid Mechanics, ex. 9.12, p. 340, three reservoirs, large mains",
                new Sketch()
                    .basin("one", 135)
                    .basin("two", 120)
                    .basin("three", 112)
                    .tee("J")
                    .line("1", "one", "J", quadratic(0.7594))
                    .line("2", "J", "two", quadratic(36.33))
                    .line("3", "J", "three", quadratic(8.168)))
            .prints("junction", head("J", 1), 131.6, 0.05)
            .computedFlow("1", 1, 2.114, 0.001)
            .computedFlow("2", 1, 0.565, 0.001)
            .computedFlow("3", 1, 1.549, 0.001));
  }

  private static Sketch threeReservoirs() {
    return threeReservoirs(fitting(0, FT), "J", "B");
  }

  private static Sketch threeReservoirs(Part inB, String from, String to) {
    return new Sketch()
        .basin("reservoir A", 100 * FT)
        .basin("B", 20 * FT)
        .basin("reservoir C", 0)
        .tee("J")
        .line("A", "reservoir A", "J", pipe(1000 * FT, FT, 0.02))
        .line("B", from, to, pipe(500 * FT, FT, 0.02), inB)
        .line("C", "J", "reservoir C", pipe(400 * FT, FT, 0.02));
  }

  static Stream<PublishedCase> series() {
    return Stream.of(
        new PublishedCase(
                "Daugherty and Franzini, Fluid Mechanics with Engineering Applications, ex. 8.8,"
                    + " p. 250, three pipes in series, as transcribed",
                between(10)
                    .line(
                        "line",
                        "upper",
                        "lower",
                        pipe(300, 0.3, 0.019),
                        neglected(),
                        pipe(150, 0.2, 0.021),
                        neglected(),
                        pipe(250, 0.25, 0.020)))
            .printsFlow("line", 1, 0.084, 0.0005),
        new PublishedCase(
                "White, Fluid Mechanics, ex. 6.17, three pipes in series (from memory, except the"
                    + " total of 20.3 m)",
                between(20.3)
                    .viscosity(1.02e-6)
                    .line(
                        "line",
                        "upper",
                        "lower",
                        white(1),
                        neglected(),
                        white(2),
                        neglected(),
                        white(3)))
            .printsFlow("line", PER_HOUR, 10.22, 0.003 * 10.22),
        new PublishedCase(
                "Subramanya, 1000 Solved Problems in Fluid Mechanics, ex. 11.5, p. 240, two pipes"
                    + " with entrance, enlargement and exit, all in one K, as transcribed",
                between(10).line("line", "upper", "lower", fitting(6.3, 0.1)))
            .printsFlow("line", 1e-3, 43.8, 0.1),
        new PublishedCase(
                "Subramanya, ex. 11.17, p. 248, main with a siphon's summit, as transcribed",
                between(16)
                    .line(
                        "line",
                        "upper",
                        "lower",
                        pipe(600, 0.15, 0.02),
                        new Gauge("summit", 14, Optional.of(new Bore(0.15))),
                        pipe(400, 0.15, 0.02)))
            .prints("speed", PublishedCase.speed("line", 1), 1.534, 0.0005)
            .printsFlow("line", 1e-3, 27.1, 0.05)
            .prints("summit, kPa absolute", s -> 9.79 * (10.3 + gaugeHead(s)), 25.26, 0.005),
        new PublishedCase(
                "Daugherty and Franzini, ex. 8.5, p. 241, long main into air, as transcribed",
                new Sketch()
                    .basin("upper", 260 * FT)
                    .outlet("end", 0)
                    .line("line", "upper", "end", ENTRANCE, EXIT, pipe(5000 * FT, 10 * IN, 0.02)))
            .printsFlow("line", CFS, 6.40, 0.01),
        new PublishedCase(
                "Massey and Ward-Smith, Mechanics of Fluids, ex. 2, p. 255, flow unknown, as"
                    + " transcribed",
                between(5)
                    .viscosity(1e-5)
                    .line(
                        "line", "upper", "lower", pipe(120, 0.1, new Friction.Roughness(0.25e-3))))
            .printsFlow("line", 1, 0.0126, 0.00005),
        new PublishedCase(
                "Natarajan, Principles of Fluid Mechanics, ex. 7.13, p. 277, seven losses on the"
                    + " velocity head of a 30 cm pipe, as transcribed",
                between(9)
                    .line(
                        "line",
                        "upper",
                        "lower",
                        ENTRANCE,
                        EndLoss.NONE,
                        fitting(20, 0.3),
                        fitting(2.53, 0.3),
                        fitting(101, 0.3),
                        fitting(0.66, 0.3),
                        fitting(41.47, 0.3),
                        fitting(2.07, 0.3)))
            .printsFlow("line", 1, 0.072, 0.0005));
  }

  /** Pressure head at the summit's gauge, m. */
  private static double gaugeHead(SteadyState state) {
    LineState line = state.line(new LineName("line"));
    double velocityHead = new Bore(0.15).velocityHeadAt(line.flowM3PerS());
    return line.parts().get(1).headBeforeM().getAsDouble() - velocityHead - 14;
  }

  static Stream<PublishedCase> parallel() {
    return Stream.of(
        new PublishedCase(
                "Douglas, Fluid Mechanics, ex. 14.3, p. 473, two pipes between tanks (Fanning's"
                    + " 0.008 is Darcy's 0.032), as transcribed",
                between(10)
                    .line("small", "upper", "lower", ENTRANCE, EXIT, pipe(100, 0.05, 0.032))
                    .line("large", "upper", "lower", ENTRANCE, EXIT, pipe(100, 0.1, 0.032)))
            .printsFlow("small", 1, 0.0034, 0.00005)
            .printsFlow("large", 1, 0.0190, 0.00005)
            .prints("total", s -> Sketch.outflow(s, "lower"), 0.0224, 0.00005),
        new PublishedCase(
                "the one pipe of equal capacity, 107 mm to the nearest millimetre",
                between(10).line("line", "upper", "lower", ENTRANCE, EXIT, pipe(100, 0.107, 0.032)))
            .printsFlow("line", 1, 0.0224, 0.012 * 0.0224),
        new PublishedCase(
                "White, Fluid Mechanics, ex. 6.18, three rough pipes (losses and results as"
                    + " printed; lengths, roughness and viscosity from memory)",
                between(20.3)
                    .viscosity(1.02e-6)
                    .line("1", "upper", "lower", white(1))
                    .line("2", "upper", "lower", white(2))
                    .line("3", "upper", "lower", white(3)))
            .printsFlow("1", PER_HOUR, 62.5, 0.002 * 62.5)
            .printsFlow("2", PER_HOUR, 25.9, 0.002 * 25.9)
            .printsFlow("3", PER_HOUR, 11.4, 0.002 * 11.4)
            .prints("total", s -> Sketch.outflow(s, "lower") / PER_HOUR, 99.8, 0.002 * 99.8),
        new PublishedCase(
                "Khan, Fluid Mechanics, ex. 9.11, p. 335, three pipes, total given, as transcribed"
                    + " (the source puts the second pipe's factor into the third)",
                new Sketch()
                    .basin("end", 0)
                    .tee("start", -2)
                    .line("1", "start", "end", pipe(500, 0.5, 0.018))
                    .line("2", "start", "end", pipe(200, 0.3, 0.020))
                    .line("3", "start", "end", pipe(300, 0.15, 0.022)))
            .printsFlow("1", 1, 1.35, 0.005 * 1.35)
            .printsFlow("2", 1, 0.566, 0.005 * 0.566)
            .computedFlow("3", 1, 0.0780, 0.005 * 0.078)
            .prints("loss", loss("1", 1), 43.5, 0.005 * 43.5));
  }

  static Stream<PublishedCase> loops() {
    return Stream.of(
        new PublishedCase(
                "Vennard, Elementary Fluid Mechanics, ex. 9.16, p. 327, 12 in main (loss with flow"
                    + " to the power 1.85), as transcribed",
                between(70 * FT).line("main", "upper", "lower", vennard(5000)))
            .printsFlow("main", CFS, 5, 1e-9),
        new PublishedCase(
                "the same with 2000 ft of it laid double",
                between(70 * FT)
                    .tee("T")
                    .line("one", "upper", "T", vennard(2000))
                    .line("other", "upper", "T", vennard(2000))
                    .line("main", "T", "lower", vennard(3000)))
            .prints("gain", s -> Sketch.flow(s, "main") / CFS - 5, 1.0, 0.05)
            .computedFlow("main", CFS, 6.0125, 0.0002),
        LoopedNetworks.threeLoopsWithTwoReservoirs(),
        LoopedNetworks.threeLoopsByLengthAndFactor(),
        LoopedNetworks.tenPipes());
  }

  /** Vennard's main: 70 ft lost at 5 ft³/s over 5000 ft. */
  private static Loss vennard(double lengthFt) {
    return new Loss(new PowerLoss(70 * FT * lengthFt / 5000, 5 * CFS, 1.85), Optional.empty());
  }

  private static Part white(int number) {
    return switch (number) {
      case 1 -> pipe(100, 0.08, new Friction.Roughness(0.24e-3));
      case 2 -> pipe(150, 0.06, new Friction.Roughness(0.12e-3));
      default -> pipe(80, 0.04, new Friction.Roughness(0.20e-3));
    };
  }

  private static Sketch between(double headM) {
    return new Sketch().basin("upper", headM).basin("lower", 0);
  }
}
