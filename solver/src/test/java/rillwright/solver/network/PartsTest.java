package rillwright.solver.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.friction.DarcyWeisbach;
import rillwright.solver.law.friction.FixedFactor;
import rillwright.solver.law.friction.HazenWilliams;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.PumpSet.Arrangement;
import rillwright.solver.water.Water;

/** The head law that each kind of part has. */
class PartsTest {
  private static final Bore BORE = new Bore(0.05);
  private static final Water WATER = new Water(998.2, 1.004e-6, 2339);
  private static final Setting BELOW_A_POND = new Setting(WATER, OptionalDouble.of(0));
  private static final Setting ELSEWHERE = new Setting(WATER, OptionalDouble.empty());
  private static final double FLOW = 0.003;

  private static void assertSameLaw(HeadLaw expected, HeadLaw actual) {
    for (double flow : new double[] {0, 1e-5, FLOW, 0.01}) {
      assertEquals(expected.headLossAt(flow), actual.headLossAt(flow), 1e-15);
    }
    assertEquals(expected.leastFlow(), actual.leastFlow());
    assertEquals(expected.greatestFlow(), actual.greatestFlow());
  }

  @Test
  void runTakesItsFrictionInTheWaterAround() {
    assertSameLaw(
        new DarcyWeisbach(12, BORE, 1e-5, 1.004e-6),
        new Run(12, BORE, new Friction.Roughness(1e-5), "pipe").law(ELSEWHERE));
    assertSameLaw(
        new HazenWilliams(12, BORE, 150),
        new Run(12, BORE, new Friction.HazenC(150), "pipe").law(ELSEWHERE));
    assertSameLaw(
        new FixedFactor(12, BORE, 0.02),
        new Run(12, BORE, new Friction.DarcyFactor(0.02), "pipe").law(ELSEWHERE));
  }

  @Test
  void runTellsItsReynoldsNumber() {
    Run run = new Run(12, BORE, new Friction.Roughness(0), "pipe");
    assertEquals(0.05 / 1.004e-6, run.reynoldsAt(-BORE.areaM2(), WATER), 1e-8);
  }

  @Test
  void fittingsAlikeTakeCountTimesK() {
    HeadLaw three = new Fitting("elbow 90", 3, 0.9, BORE).law(ELSEWHERE);
    assertEquals(2.7 * BORE.velocityHeadAt(FLOW), three.headLossAt(FLOW), 1e-14);
  }

  @Test
  void valveTakesTheKOfItsOpening() {
    Valve half =
        new Valve("ball valve", new Valve.Opening(ValveTravel.BALL, 1 - 20.0 / 90), BORE, true);
    assertFalse(half.isShut());
    assertEquals(1.56 * BORE.velocityHeadAt(FLOW), half.law(ELSEWHERE).headLossAt(FLOW), 1e-12);
  }

  @Test
  void valveWithoutOpeningIsShutBothWays() {
    Valve shut = new Valve("gate valve", new Valve.Opening(ValveTravel.GATE, 0), BORE, true);
    assertTrue(shut.isShut());
    assertEquals(0, shut.law(ELSEWHERE).leastFlow());
    assertEquals(0, shut.law(ELSEWHERE).greatestFlow());
  }

  @Test
  void checkValveHoldsItsCrackingHead() {
    HeadLaw law = new CheckValve("check valve", 0.15, 2, BORE).law(ELSEWHERE);
    assertEquals(0, law.leastFlow());
    assertEquals(0.15 + 2 * BORE.velocityHeadAt(FLOW), law.headLossAt(FLOW), 1e-14);
  }

  @Test
  void skimmerPassesWhatTheWaterOverItsSillGives() {
    Skimmer skimmer = new Skimmer(0.3, OptionalDouble.empty(), -0.12, Skimmer.WITHOUT_DOOR, 0.1);
    double free = 2.0 / 3 * 0.6 * 0.27 * Math.sqrt(2 * 9.80665) * Math.pow(0.12, 1.5);
    assertEquals(free, skimmer.law(BELOW_A_POND).greatestFlow(), 1e-15);
    assertThrows(IllegalStateException.class, () -> skimmer.law(ELSEWHERE));
  }

  /** Common practice, no source. */
  @Test
  void skimmersDoorTakesMuchOfItsFlow() {
    assertEquals(0.36, Skimmer.WITH_DOOR);
    assertEquals(0.6, Skimmer.WITHOUT_DOOR);
  }

  @Test
  void cloggedFilterDrivesAllTheFlowThroughItsOpenShare() {
    PowerLoss clean = new PowerLoss(0.5, FLOW, 2);
    Filter filter = new Filter(clean, 0.75, OptionalDouble.empty(), 0);
    assertEquals(16 * 0.5, filter.law(ELSEWHERE).headLossAt(FLOW), 1e-13);
    Filter full = new Filter(clean, 1, OptionalDouble.empty(), 0);
    assertEquals(0, full.law(ELSEWHERE).greatestFlow());
    assertEquals(0, full.law(ELSEWHERE).leastFlow());
  }

  @Test
  void pumpIsItsSet() {
    PumpCurve curve =
        new PumpCurve(
            List.of(
                new PumpPoint(0, 9, OptionalDouble.empty()),
                new PumpPoint(0.006, 3, OptionalDouble.empty())));
    PumpSet set = new PumpSet(curve, 1, 1, Arrangement.PARALLEL, Optional.empty());
    assertEquals(-6, new Pump("demo", set).law(ELSEWHERE).headLossAt(FLOW), 1e-14);
  }

  @Test
  void whatOnlyWatchesTakesNoHead() {
    for (Part part :
        List.of(
            new Gauge("G1", 0, Optional.of(BORE)),
            new HighPoint(2, Optional.of(BORE)),
            new PlannedPump())) {
      HeadLaw law = part.law(ELSEWHERE);
      assertEquals(0, law.headLossAt(FLOW), part.kind());
      assertEquals(Double.NEGATIVE_INFINITY, law.leastFlow(), part.kind());
    }
  }

  @Test
  void lossIsItsLaw() {
    PowerLoss law = new PowerLoss(0.5, FLOW, 1.5);
    assertInstanceOf(PowerLoss.class, new Loss(law, Optional.empty()).law(ELSEWHERE));
  }
}
