package rillwright.solver.law.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Gravity;

class StoneBedTest {

  /**
   * Limits of the formula (Ferguson 2007): deep water √(8/f) = a₁ x^(1/6), Manning and Strickler's
   * form; shallow water a₂ x.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e-5, 1e5})
  void goesOverToItsLimits(double x) {
    double radius = 0.06 * x;
    double velocity = new StoneBed(0.06).velocityMPerS(radius, 0.02);
    double resistance = velocity / Math.sqrt(Gravity.STANDARD_M_PER_S2 * radius * 0.02);
    double limit = x < 1 ? 2.5 * x : 6.5 * Math.pow(x, 1.0 / 6);
    assertEquals(limit, resistance, 1e-3 * limit);
  }

  /** By hand at x = 1: √(8/f) = 6.5 · 2.5 / √(6.5² + 2.5²) = 2.33333. */
  @Test
  void oneStoneDeepIsAsWorkedByHand() {
    double velocity = new StoneBed(0.06).velocityMPerS(0.06, 0.033);
    double byHand = 16.25 / Math.sqrt(48.5) * Math.sqrt(Gravity.STANDARD_M_PER_S2 * 0.06 * 0.033);
    assertEquals(byHand, velocity, 1e-12);
  }

  /**
   * The case that shows why it matters (computed, not published): 4.2 L/s for each metre of a wide
   * bed, slope 3.3 %, stones of 60 mm run 32 mm deep at 0.13 m/s; Manning with n = 0.04 says 15 mm.
   */
  @Test
  void cobbleHoldsTwiceWhatATextbookRoughnessSays() {
    ChannelSection wide = new ChannelSection(1000, 0);
    double stone = UniformFlow.normalDepthM(wide, new StoneBed(0.06), 0.033, 4.2);
    double manning = UniformFlow.normalDepthM(wide, new Manning(0.04), 0.033, 4.2);
    assertEquals(0.032, stone, 5e-4);
    assertEquals(0.13, 4.2 / 1000 / stone, 5e-3);
    assertEquals(0.015, manning, 5e-4);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 3})
  void depthIsFoundBackInAnySection(double bank) {
    ChannelSection section = new ChannelSection(bank == 3 ? 0 : 0.4, bank);
    double before = 0;
    for (double flow = 1e-6; flow < 0.1; flow *= 3) {
      double depth = UniformFlow.normalDepthM(section, new StoneBed(0.05), 0.02, flow);
      assertEquals(
          flow, UniformFlow.flowM3PerS(section, new StoneBed(0.05), 0.02, depth), 1e-12 * flow);
      assertTrue(depth > before);
      before = depth;
    }
  }

  /** A level reach: what friction takes over it is twice what its mean depth exceeds the drop's. */
  @Test
  void levelReachStandsAsDeepAsItsFrictionNeeds() {
    ChannelSection section = new ChannelSection(0.6, 0);
    double flow = 0.003;
    double mean = UniformFlow.levelReachDepthM(section, new Manning(0.04), 6, flow);
    double rise = 2 * (mean - UniformFlow.criticalDepthM(section, flow));
    double velocity = flow / section.areaM2(mean);
    double friction =
        6 * Math.pow(0.04 * velocity, 2) / Math.pow(section.hydraulicRadiusM(mean), 4.0 / 3);
    assertEquals(friction, rise, 1e-10);
  }

  @Test
  void whatIsNoChannelIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new ChannelSection(0, 0));
    assertThrows(IllegalArgumentException.class, () -> new ChannelSection(-1, 1));
    assertThrows(IllegalArgumentException.class, () -> new StoneBed(0));
    assertThrows(IllegalArgumentException.class, () -> new Manning(Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () -> UniformFlow.normalDepthM(new ChannelSection(1, 0), new Manning(0.03), 0, 1));
  }
}
