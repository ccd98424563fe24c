package rillwright.solver.law.friction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Draw;
import rillwright.solver.law.SameBothWaysContract;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.Trial;

class DarcyWeisbachTest implements SameBothWaysContract {
  private static final double WATER_M2_PER_S = 1.004e-6;
  private static final double G = 9.80665;

  @Override
  public Trial trial(SplittableRandom random) {
    Bore bore = Draw.bore(random);
    double viscosity = Draw.between(random, 0.6e-6, 2e-6);
    double roughness = bore.diameterM() * random.nextDouble() * 0.05;
    DarcyWeisbach pipe =
        new DarcyWeisbach(Draw.between(random, 0.1, 500), bore, roughness, viscosity);
    double turbulent = flowAt(4000, bore, viscosity);
    return Trial.withJointsBothWays(
        pipe, turbulent * Draw.between(random, 0.5, 50), List.of(turbulent / 2, turbulent));
  }

  private static double flowAt(double reynolds, Bore bore, double viscosity) {
    return reynolds * viscosity * bore.areaM2() / bore.diameterM();
  }

  /** Hagen and Poiseuille: h = 128 ν L Q/(π g d⁴). */
  @ParameterizedTest
  @ValueSource(doubles = {1, 100, 1999.9})
  void laminarLossIsProportionalToFlow(double reynolds) {
    Bore bore = new Bore(0.02);
    double flow = flowAt(reynolds, bore, WATER_M2_PER_S);
    DarcyWeisbach pipe = new DarcyWeisbach(30, bore, 1e-4, WATER_M2_PER_S);
    double expected = 128 * WATER_M2_PER_S * 30 * flow / (Math.PI * G * Math.pow(0.02, 4));
    assertEquals(expected, pipe.headLossAt(flow), 1e-13 * expected);
    assertEquals(64 / reynolds, pipe.darcyFrictionFactorAt(flow), 1e-13 * 64 / reynolds);
  }

  @ParameterizedTest
  @ValueSource(doubles = {4000.1, 3e4, 1e6})
  void turbulentLossIsColebrooksFactorTimesTheVelocityHead(double reynolds) {
    Bore bore = new Bore(0.05);
    double flow = flowAt(reynolds, bore, WATER_M2_PER_S);
    DarcyWeisbach pipe = new DarcyWeisbach(30, bore, 1e-4, WATER_M2_PER_S);
    double factor = ColebrookWhite.darcyFrictionFactor(0.002, reynolds);
    double expected = factor * 600 * bore.velocityHeadAt(flow);
    assertEquals(expected, pipe.headLossAt(flow), 1e-13 * expected);
    assertEquals(factor, pipe.darcyFrictionFactorAt(flow), 1e-13 * factor);
  }

  /** The cubic, worked apart: end values and slopes by h = f Q² units, solved as a 4 × 4 system. */
  @Test
  void lossBetweenIsTheCubicThroughBothEndsAndSlopes() {
    Bore bore = new Bore(0.05);
    DarcyWeisbach pipe = new DarcyWeisbach(100, bore, 1e-4, WATER_M2_PER_S);
    double from = flowAt(2000, bore, WATER_M2_PER_S);
    double to = flowAt(4000, bore, WATER_M2_PER_S);
    double h = to - from;
    double y0 = pipe.headLossAt(from * (1 - 1e-14));
    double y1 = pipe.headLossAt(to * (1 + 1e-14));
    double m0 = y0 / from;
    double m1 = (pipe.headLossAt(to * (1 + 1e-6)) - y1) / (1e-6 * to);
    double secant = (y1 - y0) / h;
    double c2 = (3 * secant - 2 * m0 - m1) / h;
    double c3 = (m0 + m1 - 2 * secant) / (h * h);
    for (double share = 0.1; share < 1; share += 0.1) {
      double q = share * h;
      double expected = y0 + q * (m0 + q * (c2 + q * c3));
      assertEquals(expected, pipe.headLossAt(from + q), 2e-6 * expected, "share " + share);
    }
  }

  @Seeded
  void lossRisesThroughTheTransitionForRoughnessUpToFivePercent(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 100; i++) {
      double share = random.nextInt(10) == 0 ? 0.05 : 0.05 * random.nextDouble();
      Bore bore = Draw.bore(random);
      DarcyWeisbach pipe =
          new DarcyWeisbach(1, bore, share * bore.diameterM(), Draw.between(random, 6e-7, 2e-6));
      double laminarSlope = pipe.slopeAt(0);
      double start = laminarEnd(pipe);
      for (double at = 1; at <= 2; at += 0.005) {
        double slope = pipe.slopeAt(at * start);
        String where = "k/D " + share + ", Re " + 2000 * at + ", seed " + seed;
        assertTrue(slope >= laminarSlope * (1 - 1e-12), where);
      }
    }
  }

  /** The flow up to which the loss is proportional to it, found from the law itself. */
  private static double laminarEnd(DarcyWeisbach pipe) {
    double low = 1e-9;
    double high = 1;
    for (int i = 0; i < 200; i++) {
      double middle = (low + high) / 2;
      boolean proportional = pipe.slopeAt(middle) == pipe.slopeAt(0);
      low = proportional ? middle : low;
      high = proportional ? high : middle;
    }
    return low;
  }

  @Seeded
  void frictionFactorGivesTheLossBackAtEveryFlow(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Bore bore = Draw.bore(random);
    double roughness = 0.05 * random.nextDouble() * bore.diameterM();
    DarcyWeisbach pipe = new DarcyWeisbach(12, bore, roughness, WATER_M2_PER_S);
    for (int i = 0; i < 200; i++) {
      double reynolds = Draw.between(random, 100, 1e6);
      double flow = -flowAt(reynolds, bore, WATER_M2_PER_S);
      double loss =
          pipe.darcyFrictionFactorAt(flow) * 12 / bore.diameterM() * bore.velocityHeadAt(flow);
      assertEquals(loss, -pipe.headLossAt(flow), 1e-12 * loss, "Re " + reynolds + " " + seed);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1000, 2000, 3000, 4000, 1e5})
  void frictionFactorDoesNotNeedALength(double reynolds) {
    Bore bore = new Bore(0.05);
    double flow = flowAt(reynolds, bore, WATER_M2_PER_S);
    assertEquals(
        new DarcyWeisbach(1, bore, 1e-4, WATER_M2_PER_S).darcyFrictionFactorAt(flow),
        new DarcyWeisbach(0, bore, 1e-4, WATER_M2_PER_S).darcyFrictionFactorAt(flow));
  }

  @Test
  void lossGrowsWithLength() {
    Bore bore = new Bore(0.05);
    double one = new DarcyWeisbach(1, bore, 1e-4, WATER_M2_PER_S).headLossAt(0.003);
    double seven = new DarcyWeisbach(7, bore, 1e-4, WATER_M2_PER_S).headLossAt(0.003);
    assertEquals(7 * one, seven, 1e-14);
  }
}
