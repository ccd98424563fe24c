package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Friction;

/**
 * Small networks of running pumps, pipes, fittings, basins, loops and weirs, solved also by a
 * general solver on equations that are written without the project's laws.
 */
class IndependentSolutionTest {
  private static final int TRIED = 60;
  private static final int LEAST_SOLVED = 45;
  private static final double VISCOSITY = 1.1e-6;

  /** One network, given to both. */
  private static final class Both {
    private final SplittableRandom random;
    private final Sketch sketch = new Sketch().viscosity(VISCOSITY);
    private final PlainEquations plain = new PlainEquations();
    private final List<String> points = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();

    Both(long seed) {
      random = new SplittableRandom(seed);
      build();
    }

    private double uniform(double from, double to) {
      return from + (to - from) * random.nextDouble();
    }

    private void basin(String name, double level) {
      sketch.basin(name, level);
      points.add(name);
      plain.held(level);
    }

    private void tee(String name) {
      sketch.tee(name);
      points.add(name);
      plain.free();
    }

    private void fall(String name, double crest) {
      double width = uniform(0.2, 0.8);
      sketch.fall(name, crest, new PowerWeir(1.6, width, BrinkRule.FREE_OVERFALL));
      points.add(name);
      int box = plain.free();
      int outside = plain.held(crest);
      points.add("outside " + name);
      plain.line(box, outside, flow -> PlainLaws.weir(flow, 1.6, width));
      lines.add("over " + name);
    }

    private void pipe(String from, String to) {
      double length = uniform(2, 30);
      double bore = uniform(0.03, 0.08);
      double roughness = uniform(0, 2e-4);
      double k = uniform(0.5, 5);
      String name = "line " + lines.size();
      sketch.line(
          name,
          from,
          to,
          Sketch.pipe(length, bore, new Friction.Roughness(roughness)),
          Sketch.fitting(k, bore));
      shown(
          name,
          from,
          to,
          flow ->
              PlainLaws.pipe(flow, length, bore, roughness, VISCOSITY)
                  + PlainLaws.fitting(flow, k, bore));
    }

    private void pump(String from, String to) {
      double shutOff = uniform(8, 15);
      double most = uniform(0.004, 0.012);
      double[] flows = new double[5];
      double[] heads = new double[5];
      double[] sheet = new double[10];
      for (int i = 0; i < 5; i++) {
        flows[i] = most * Math.pow(i / 4.0, uniform(0.9, 1.1));
        heads[i] = shutOff * (1 - Math.pow(i / 4.0, 1.8) * 0.9);
        sheet[2 * i] = flows[i];
        sheet[2 * i + 1] = heads[i];
      }
      String name = "line " + lines.size();
      double bore = uniform(0.04, 0.06);
      sketch.line(name, from, to, Sketch.pump(sheet), Sketch.fitting(2, bore));
      shown(
          name,
          from,
          to,
          flow -> PlainLaws.fitting(flow, 2, bore) - PlainLaws.pump(flow, flows, heads));
    }

    private void shown(String name, String from, String to, DoubleUnaryOperator headLoss) {
      plain.line(points.indexOf(from), points.indexOf(to), headLoss);
      lines.add(name);
    }

    private void build() {
      basin("pond", 0);
      int tees = 2 + random.nextInt(3);
      for (int i = 0; i < tees; i++) {
        tee("tee " + i);
        if (i == 0 || random.nextInt(4) == 0) {
          pump("pond", "tee " + i);
        }
        if (i > 0) {
          pipe("tee " + random.nextInt(i), "tee " + i);
        }
      }
      if (random.nextBoolean()) {
        basin("upper", uniform(1, 3));
        pipe("tee " + random.nextInt(tees), "upper");
      }
      int falls = 1 + random.nextInt(3);
      for (int i = 0; i < falls; i++) {
        fall("fall " + i, uniform(1, 1.4));
        pipe("tee " + random.nextInt(tees), "fall " + i);
      }
      for (int i = random.nextInt(3); i > 0; i--) {
        pipe("tee " + (1 + random.nextInt(tees - 1)), "tee 0");
      }
    }

    /** Whether everything runs. */
    boolean runs(SteadyState state) {
      return state.lines().stream().allMatch(line -> line.flowM3PerS() != 0)
          && state.points().stream()
              .allMatch(p -> p.point().spill().isEmpty() || p.outflowM3PerS() > 0);
    }
  }

  @Test
  void aGeneralSolverFindsTheSameFlows(TestReporter reporter) {
    int tried = 0;
    int solved = 0;
    double worst = 0;
    for (long seed = 0; tried < TRIED; seed++) {
      Both both = new Both(seed);
      SteadyState state = both.sketch.solve();
      if (!both.runs(state)) {
        continue;
      }
      tried++;
      Optional<double[]> flows = both.plain.solve();
      if (flows.isEmpty()) {
        continue;
      }
      solved++;
      for (int k = 0; k < flows.get().length; k++) {
        String line = both.lines.get(k);
        double ours =
            line.startsWith("over ")
                ? Sketch.outflow(state, line.substring(5))
                : Sketch.flow(state, line);
        double largest = largest(flows.get());
        double error = Math.abs(ours - flows.get()[k]) / largest;
        worst = Math.max(worst, error);
        assertEquals(flows.get()[k], ours, 1e-6 * largest, "seed " + seed + ", " + line);
      }
    }
    reporter.publishEntry(solved + " of " + tried + " solved, worst difference " + worst);
    assertTrue(solved >= LEAST_SOLVED, solved + " of " + tried + " solved");
  }

  private static double largest(double[] flows) {
    double largest = 0;
    for (double flow : flows) {
      largest = Math.max(largest, Math.abs(flow));
    }
    return largest;
  }
}
