package rillwright.solver.law.minor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ValveTravelTest {

  /**
   * A chemical engineers' handbook's table (seen as a reproduction): plug cock and butterfly valve
   * by the angle from open, gate valve by the share of its lift.
   */
  @ParameterizedTest(name = "{0} {1}° from open: K {2}")
  @CsvSource({
    "BALL, 5, 0.05",
    "BALL, 10, 0.29",
    "BALL, 20, 1.56",
    "BALL, 40, 17.3",
    "BALL, 60, 206",
    "BUTTERFLY, 5, 0.24",
    "BUTTERFLY, 10, 0.52",
    "BUTTERFLY, 20, 1.54",
    "BUTTERFLY, 40, 10.8",
    "BUTTERFLY, 60, 118"
  })
  void agreesWithThePrintedTableByAngle(ValveTravel valve, double degrees, double k) {
    assertTrue(valve.turns());
    assertEquals(k, valve.published().lossCoefficientAt(1 - degrees / 90), 1e-12 * k);
    assertEquals(degrees, ValveTravel.degreesFromOpen(1 - degrees / 90), 1e-12);
  }

  @ParameterizedTest(name = "gate {0} open: K {1}")
  @CsvSource({"1, 0.17", "0.75, 0.9", "0.5, 4.5", "0.25, 24"})
  void agreesWithThePrintedTableByLift(double open, double k) {
    assertEquals(k, ValveTravel.GATE.published().lossCoefficientAt(open), 1e-12 * k);
  }

  /** Half-way between two printed angles K is their geometric mean. */
  @Test
  void logarithmOfKIsStraightBetweenPrintedAngles() {
    assertEquals(
        Math.sqrt(1.56 * 17.3),
        ValveTravel.BALL.published().lossCoefficientAt(1 - 30.0 / 90),
        1e-12 * 5.2);
    assertEquals(
        Math.sqrt(0.9 * 4.5), ValveTravel.GATE.published().lossCoefficientAt(0.625), 1e-12);
  }

  /** From 40° to 60° K of a ball valve grows 206/17.3 times, so from 60° to 80° it does again. */
  @Test
  void lastSlopeGoesOnBeyondTheLastPrintedAngle() {
    assertEquals(
        206 * 206 / 17.3, ValveTravel.BALL.published().lossCoefficientAt(1 - 80.0 / 90), 1e-8);
    assertEquals(24 * 24 / 4.5, ValveTravel.GATE.published().lossCoefficientAt(1e-13), 1e-6);
  }

  @ParameterizedTest
  @EnumSource
  void closingNeverLowersTheLossUntilItIsShut(ValveTravel valve) {
    double before = 0;
    for (int percent = 100; percent > 0; percent--) {
      double k = valve.published().lossCoefficientAt(percent / 100.0);
      assertTrue(k >= before && k > 0 && Double.isFinite(k), valve + " at " + percent + " %");
      before = k;
    }
    assertEquals(Double.POSITIVE_INFINITY, valve.published().lossCoefficientAt(0));
  }

  @ParameterizedTest
  @EnumSource
  void publishedPointsLieOnItsCurve(ValveTravel valve) {
    assertTrue(valve.publishedPoints().size() >= 4);
    for (ValveTravel.TravelPoint point : valve.publishedPoints()) {
      double k = valve.published().lossCoefficientAt(point.opening());
      assertEquals(point.lossCoefficient(), k, 1e-12 * k, point.toString());
    }
  }

  @ParameterizedTest
  @EnumSource
  void openingIsFoundAgainFromItsLoss(ValveTravel valve) {
    for (int percent = 1; percent <= 90; percent++) {
      double k = valve.published().lossCoefficientAt(percent / 100.0);
      assertEquals(
          percent / 100.0, valve.published().openingAt(k), 1e-12, valve + " at " + percent + " %");
    }
    assertEquals(1, valve.published().openingAt(valve.published().lossCoefficientAt(1)));
    double greatest = valve.published().greatestLossCoefficient();
    double found = valve.published().lossCoefficientAt(valve.published().openingAt(greatest));
    assertEquals(greatest, found, 2e-5 * greatest, "short of shut by a millionth of the travel");
  }

  /**
   * K when open by size, 45 fT at 2 in 0.855 (Crane, Technical Paper 410), leads to the first angle
   * whose printed K is greater: half-way to the 1.54 of 20° it is their geometric mean.
   */
  @Test
  void lossOfAnOpenValveLeadsToTheFirstPrintedPointAboveIt() {
    ValveLoss butterfly = new ValveLoss(ValveTravel.BUTTERFLY, 0.855);
    assertEquals(0.855, butterfly.lossCoefficientAt(1), 1e-12);
    assertEquals(Math.sqrt(0.855 * 1.54), butterfly.lossCoefficientAt(1 - 10.0 / 90), 1e-12);
    assertEquals(1.54, butterfly.lossCoefficientAt(1 - 20.0 / 90), 1e-12);
    assertEquals(10.8, butterfly.lossCoefficientAt(1 - 40.0 / 90), 1e-12);
    assertEquals(1 - 10.0 / 90, butterfly.openingAt(Math.sqrt(0.855 * 1.54)), 1e-12);
    assertEquals(1, butterfly.openingAt(0.855));
    assertEquals(
        ValveTravel.BUTTERFLY.published().greatestLossCoefficient(),
        butterfly.greatestLossCoefficient());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, Double.NaN, 11})
  void refusesWhatIsNoOpenValve(double k) {
    assertThrows(IllegalArgumentException.class, () -> new ValveLoss(ValveTravel.BUTTERFLY, k));
  }

  /**
   * The ball valve's last slope, ln(206/17.3) over 20°, from 60° to 90°: K = 206 (206/17.3)^1.5.
   */
  @Test
  void greatestLossOfABallValveIsWhereItsLastSlopeEnds() {
    double byHand = 206 * Math.pow(206 / 17.3, 1.5);
    assertEquals(byHand, ValveTravel.BALL.published().greatestLossCoefficient(), 1e-9 * byHand);
  }
}
