package rillwright.solver.law.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Gravity;

/** Worked examples of textbooks; the tolerance is the last printed digit. */
class PublishedChannelsTest {
  private static final double FOOT = 0.3048;
  private static final double CUBIC_FOOT = FOOT * FOOT * FOOT;

  /**
   * Normal flow by Manning: Irfan, Fluid Mechanics problems, ex. 10.2, p. 366; Natarajan,
   * Principles of Fluid Mechanics, ex. 8.1, p. 306; Subramanya, 1000 Solved Problems in Fluid
   * Mechanics, ex. 12.3, p. 278; all as transcribed. And the depth is found back from the flow.
   */
  @ParameterizedTest(name = "{0} m, {1}:1, {2} m deep carries {5} m³/s")
  @CsvSource({
    "3, 1, 1.5, 0.0009, 0.012, 16.1, 0.05",
    "4, 0, 1.2, 0.001, 0.012, 10.442, 0.0005",
    "10, 1.5, 3, 4.4507e-4, 0.015, 100, 0.01"
  })
  void carriesWhatThePageSays(
      double bed, double bank, double depth, double slope, double n, double flow, double digit) {
    ChannelSection section = new ChannelSection(bed, bank);
    Manning manning = new Manning(n);
    double found = UniformFlow.flowM3PerS(section, manning, slope, depth);
    assertEquals(flow, found, digit);
    assertEquals(depth, UniformFlow.normalDepthM(section, manning, slope, found), 1e-12);
  }

  /** Cengel, Fluid Mechanics, ex. 13-1, as checked in an open library of fluid formulas. */
  @Test
  void velocityIsAsInTheTextbook() {
    double velocity = new Manning(0.030).velocityMPerS(0.2859, 0.005236);
    assertEquals(1.0468, velocity, 5e-5);
    assertEquals(0.5989, 0.5721 * velocity, 5e-5);
  }

  /** Irfan, ex. 10.1, p. 363, as transcribed: b 3 m, 0.5:1, 2 m deep; Z = A √D. */
  @Test
  void partsOfASectionAreAsInTheTextbook() {
    ChannelSection section = new ChannelSection(3, 0.5);
    assertEquals(5, section.surfaceWidthM(2), 1e-12);
    assertEquals(8, section.areaM2(2), 1e-12);
    assertEquals(7.472, section.perimeterM(2), 5e-4);
    assertEquals(1.07, section.hydraulicRadiusM(2), 5e-3);
    assertEquals(1.6, section.meanDepthM(2), 1e-12);
    assertEquals(10.12, section.areaM2(2) * Math.sqrt(section.meanDepthM(2)), 5e-3);
  }

  /** Critical depth: Subramanya, ex. 12.25, p. 285, and 12.28 (a, b), p. 286, as transcribed. */
  @ParameterizedTest(name = "{0} m, {1}:1, {2} m³/s is critical at {3} m")
  @CsvSource({"2, 0, 6, 0.972", "3, 0, 6, 0.742", "0, 1.5, 6, 1.267"})
  void criticalDepthIsAsThePageSays(double bed, double bank, double flow, double depth) {
    ChannelSection section = new ChannelSection(bed, bank);
    double critical = UniformFlow.criticalDepthM(section, flow);
    assertEquals(depth, critical, 5.5e-4);
    assertEquals(1, UniformFlow.froude(section, flow, critical), 1e-12);
  }

  /**
   * Subramanya, ex. 12.25 and 12.30, as transcribed: energy at critical depth, 1.458 m in the
   * rectangle of 2 m with 6 m³/s; 1.236 m in b 3.5 m, 2:1, yc 0.9 m.
   */
  @Test
  void criticalEnergyIsAsThePageSays() {
    assertEquals(1.458, criticalEnergy(new ChannelSection(2, 0), 0.9717), 1e-3);
    assertEquals(1.236, criticalEnergy(new ChannelSection(3.5, 2), 0.9), 5e-4);
  }

  /** Depth and half the mean depth, which is the velocity head there. */
  private static double criticalEnergy(ChannelSection section, double depth) {
    return depth + section.meanDepthM(depth) / 2;
  }

  /**
   * Subramanya, ex. 12.31, p. 287, as transcribed: b 3 m, yc 1.2 m, n 0.014 is critical at 3.96e-3.
   */
  @Test
  void criticalSlopeIsAsThePageSays() {
    ChannelSection section = new ChannelSection(3, 0);
    double flow = 3 * Math.sqrt(Gravity.STANDARD_M_PER_S2 * Math.pow(1.2, 3));
    assertEquals(1.2, UniformFlow.normalDepthM(section, new Manning(0.014), 3.96e-3, flow), 1.5e-3);
  }

  /**
   * Chow (1959), Open-Channel Hydraulics, ex. 6-2 and 4-2 (from memory): 400 ft³/s in b 20 ft, 2:1,
   * S 0.0016, n 0.025 runs 3.36 ft deep; critical is 2.15 ft.
   */
  @Test
  void depthsAreAsInTheHandbook() {
    ChannelSection section = new ChannelSection(20 * FOOT, 2);
    double flow = 400 * CUBIC_FOOT;
    double normal = UniformFlow.normalDepthM(section, new Manning(0.025), 0.0016, flow);
    assertEquals(3.36, normal / FOOT, 0.01);
    assertEquals(2.15, UniformFlow.criticalDepthM(section, flow) / FOOT, 0.01);
  }
}
