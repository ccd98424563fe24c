package rillwright.solver.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;

/** What the ends of a line cost, and how water leaves the network at them. */
class EndsTest {
  private static final Bore BORE = new Bore(0.05);
  private static final PointName NAME = new PointName("end");
  private static final double VELOCITY_HEAD_M = 1 / (2 * 9.80665);
  private static final Nozzle NOZZLE = new Nozzle(new Bore(0.01), 0.97);

  private static Outlet outlet(OptionalDouble level, Optional<Nozzle> nozzle) {
    return new Outlet(NAME, 1.5, level, nozzle, OptionalDouble.empty());
  }

  private static Fall fall() {
    return new Fall(
        NAME,
        2,
        new PowerWeir(1.6, 0.75, BrinkRule.FREE_OVERFALL),
        0.3,
        OptionalDouble.empty(),
        Optional.empty());
  }

  @Test
  void endInOpenWaterCostsHalfAVelocityHeadInAndAWholeOneOut() {
    EndLoss loss =
        new Chamber(NAME, -1, -0.8, OptionalDouble.empty(), OptionalDouble.empty()).usualEndLoss();
    assertEquals(EndLoss.OPEN_WATER, loss);
    assertEquals(
        loss,
        new Basin(
                NAME,
                0,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty())
            .usualEndLoss());
    LineEnd end = new LineEnd(loss, Optional.of(BORE));
    double atOneMetreASecond = BORE.areaM2();
    HeadLaw entrance = end.lawAtFrom();
    assertEquals(0.5 * VELOCITY_HEAD_M, entrance.headLossAt(atOneMetreASecond), 1e-15);
    assertEquals(-VELOCITY_HEAD_M, entrance.headLossAt(-atOneMetreASecond), 1e-15);
    HeadLaw exit = end.lawAtTo();
    assertEquals(VELOCITY_HEAD_M, exit.headLossAt(atOneMetreASecond), 1e-15);
    assertEquals(-0.5 * VELOCITY_HEAD_M, exit.headLossAt(-atOneMetreASecond), 1e-15);
  }

  @Test
  void endGivenInTheFileCostsTheSameBothWays() {
    LineEnd end = new LineEnd(EndLoss.bothWays(0.25), Optional.of(BORE));
    double flow = BORE.areaM2();
    assertEquals(0.25 * VELOCITY_HEAD_M, end.lawAtFrom().headLossAt(flow), 1e-16);
    assertEquals(-0.25 * VELOCITY_HEAD_M, end.lawAtFrom().headLossAt(-flow), 1e-16);
  }

  @Test
  void endWithoutABoreCostsNothing() {
    LineEnd end = new LineEnd(EndLoss.OPEN_WATER, Optional.empty());
    assertEquals(0, end.lawAtFrom().headLossAt(0.01));
    assertEquals(0, end.lawAtTo().headLossAt(-0.01));
  }

  @Test
  void endAtATeeCostsNothing() {
    assertEquals(EndLoss.NONE, new Tee(NAME, OptionalDouble.empty(), 0).usualEndLoss());
  }

  @Test
  void endInAFallsBoxLosesItsVelocityHead() {
    assertEquals(1, fall().usualEndLoss().kLeaving());
  }

  @Test
  void openEndInAirLosesTheJetAndDoesNotSuck() {
    Outlet outlet = outlet(OptionalDouble.empty(), Optional.empty());
    assertEquals(1, outlet.usualEndLoss().kLeaving());
    assertEquals(OptionalDouble.empty(), outlet.heldHeadM());
    Spill spill = outlet.spill().orElseThrow();
    assertEquals(1.5, spill.levelM());
    assertEquals(0, spill.law().leastFlow());
    assertEquals(0, spill.law().headLossAt(0.01));
  }

  @Test
  void nozzleInAirReplacesTheExitLossAndDoesNotSuck() {
    Outlet outlet = outlet(OptionalDouble.empty(), Optional.of(NOZZLE));
    assertEquals(0, outlet.usualEndLoss().kLeaving());
    Spill spill = outlet.spill().orElseThrow();
    assertEquals(1.5, spill.levelM());
    assertEquals(0, spill.law().leastFlow());
    double flow = 0.97 * NOZZLE.opening().areaM2();
    assertEquals(VELOCITY_HEAD_M, spill.law().headLossAt(flow), 1e-15);
  }

  @Test
  void openEndUnderWaterIsHeldAtThatLevel() {
    Outlet outlet = outlet(OptionalDouble.of(1.8), Optional.empty());
    assertEquals(OptionalDouble.of(1.8), outlet.heldHeadM());
    assertEquals(Optional.empty(), outlet.spill());
    assertEquals(EndLoss.OPEN_WATER, outlet.usualEndLoss());
  }

  @Test
  void nozzleUnderWaterCountsFromThatLevelBothWays() {
    Outlet outlet = outlet(OptionalDouble.of(1.8), Optional.of(NOZZLE));
    Spill spill = outlet.spill().orElseThrow();
    assertEquals(1.8, spill.levelM());
    assertEquals(Double.NEGATIVE_INFINITY, spill.law().leastFlow());
    assertEquals(-spill.law().headLossAt(0.001), spill.law().headLossAt(-0.001));
    assertEquals(0, outlet.usualEndLoss().kLeaving());
  }

  @Test
  void fallSpillsOverItsCrest() {
    Spill spill = fall().spill().orElseThrow();
    assertEquals(2, spill.levelM());
    assertEquals(0.04, spill.law().headLossAt(1.6 * 0.75 * 0.008), 1e-16);
    assertEquals(0, spill.law().leastFlow());
  }

  @Test
  void endRefusesANegativeK() {
    assertThrows(IllegalArgumentException.class, () -> new EndLoss(-0.5, 1));
    assertThrows(IllegalArgumentException.class, () -> EndLoss.bothWays(Double.NaN));
  }
}
