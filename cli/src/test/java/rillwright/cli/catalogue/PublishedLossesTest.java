package rillwright.cli.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.ValveLoss;

/** Losses, lips and beds agree with the published tables that they are said to be from. */
class PublishedLossesTest {
  private static final List<String> SIZES =
      List.of("1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "4");
  private final Catalogue catalogue = Catalogue.standard();

  /**
   * Rishel, HVAC Pump Handbook, 2nd ed. 2006, Tables 3.7 to 3.11: screwed fittings by size, 1/2 to
   * 4 in; a dash where the table has none.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "elbow 90 threaded, 2.10 1.70 1.50 1.30 1.20 1.00 0.85 0.76 0.65",
    "long elbow 90 threaded, - 0.85 0.76 0.65 0.53 0.43 0.36 0.29 0.23",
    "elbow 45 threaded, 0.36 0.35 0.33 0.32 0.31 0.30 0.29 0.28 0.27",
    "tee branch threaded, 2.40 2.10 1.90 1.70 1.60 1.40 1.30 1.20 1.10",
    "tee run threaded, 0.90 0.90 0.90 0.90 0.90 0.90 0.90 0.90 0.90"
  })
  void threadedFittingsHaveThePublishedLossesBySize(String type, String published) {
    String[] losses = published.split(" ");
    for (int i = 0; i < losses.length; i++) {
      if (!losses[i].equals("-")) {
        Bore bore = scheduleFortyBore(SIZES.get(i));
        double k = catalogue.findFitting(type, bore).orElseThrow().lossCoefficient();
        assertEquals(Double.parseDouble(losses[i]), k, 0, type + " " + SIZES.get(i));
      }
    }
  }

  /**
   * Crane, Technical Paper 410 (1976), pages: K = n fT (seen as reprints in Ludwig,
   * Applied Process Design, vol. 1, Table 2-2; the edition of 2009 has fT 1 to 6 % lower).
   */
  @ParameterizedTest(name = "{0} in: fT {1}")
  @CsvSource({
    "1/2, 0.027",
    "3/4, 0.025",
    "1, 0.023",
    "1-1/4, 0.022",
    "1-1/2, 0.021",
    "2, 0.019",
    "2-1/2, 0.018",
    "3, 0.018",
    "4, 0.017",
    "6, 0.015"
  })
  void partsHaveThePublishedMultiplesOfFullyRoughFriction(String size, double factor) {
    Bore bore = scheduleFortyBore(size);
    assertEquals(30 * factor, fitting("elbow 90", bore), 1e-9);
    assertEquals(16 * factor, fitting("elbow 45", bore), 1e-9);
    assertEquals(20 * factor, fitting("tee run", bore), 1e-9);
    assertEquals(60 * factor, fitting("tee branch", bore), 1e-9);
    assertEquals(100 * factor, checkValve("swing", bore).lossCoefficient(), 1e-9);
    assertEquals(75 * factor, checkValve("foot valve hinged", bore).lossCoefficient(), 1e-9);
    assertEquals(420 * factor, checkValve("foot valve poppet", bore).lossCoefficient(), 1e-9);
    assertEquals(3 * factor, openValve("ball", bore), 1e-9);
    assertEquals(45 * factor, openValve("butterfly", bore), 1e-9);
    assertEquals(8 * factor, openValve("gate", bore), 1e-9);
  }

  private double openValve(String type, Bore bore) {
    return catalogue.findValve(type, bore).orElseThrow().lossCoefficientAt(1);
  }

  /** Metric sizes by the nearest bore: 63 mm PN 10, 57 mm inside, lies nearer to 2 in. */
  @Test
  void metricSizeTakesTheFactorOfTheNearestBore() {
    Bore bore = new Bore(catalogue.findPipe("PVC-U PN 10", "63 mm").orElseThrow().insideM());
    assertEquals(1.9, checkValve("swing", bore).lossCoefficient(), 1e-9);
  }

  @Test
  void swingCheckValveOpensAtOnce() {
    assertEquals(0, checkValve("swing", new Bore(0.052)).crackingHeadM());
  }

  /** A handbook's table of loss coefficients (seen as a reproduction). */
  @ParameterizedTest(name = "{0} by {1}")
  @CsvSource({
    "ball, 10, 0.29",
    "ball, 20, 1.56",
    "ball, 40, 17.3",
    "ball, 60, 206",
    "butterfly, 5, 0.24",
    "butterfly, 20, 1.54",
    "butterfly, 60, 118"
  })
  void valvesThatTurnHaveThePublishedLossByAngle(String type, double degrees, double published) {
    assertPublishedOpening(type, 1 - degrees / 90, published);
  }

  /** The same handbook: gate valve 3/4, 1/2 and 1/4 open. */
  @ParameterizedTest(name = "gate {0} open")
  @CsvSource({"0.75, 0.9", "0.5, 4.5", "0.25, 24"})
  void gateValveHasThePublishedLossByLift(double open, double published) {
    assertPublishedOpening("gate", open, published);
  }

  private void assertPublishedOpening(String type, double opening, double published) {
    ValveLoss loss = catalogue.findValve(type, new Bore(0.026)).orElseThrow();
    if (published > loss.openLossCoefficient()) {
      assertEquals(published, loss.lossCoefficientAt(opening), 1e-9 * published);
    }
    assertTrue(
        catalogue.listValveOpenings().stream()
            .filter(row -> row.travel() == loss.travel())
            .filter(row -> Math.abs(row.opening() - opening) < 1e-12)
            .anyMatch(row -> row.lossCoefficient() == published),
        "printed among the openings");
  }

  /** Chow, Open-Channel Hydraulics, 1959, Table 5-6, natural streams: least, normal, greatest n. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "clean straight, 0.025, 0.030, 0.033",
    "stones and weeds, 0.030, 0.035, 0.040",
    "winding pools and shoals, 0.033, 0.040, 0.045",
    "winding stones and weeds, 0.035, 0.045, 0.050",
    "mountain gravel and cobble, 0.030, 0.040, 0.050",
    "mountain large boulders, 0.040, 0.050, 0.070"
  })
  void bedsHaveThePublishedManningNumbers(String name, double least, double n, double greatest) {
    Bed bed = catalogue.findBed(name).orElseThrow();
    assertEquals(n, bed.manningN().orElseThrow());
    assertEquals(least, bed.least());
    assertEquals(greatest, bed.greatest());
    assertTrue(bed.stoneM().isEmpty());
  }

  /** Wentworth 1922: cobbles are 64 to 256 mm, pebbles 4 to 64 mm. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"pebbles, 0.004, 0.064", "cobble, 0.064, 0.256", "large cobble, 0.064, 0.256"})
  void stonesLieInTheirPublishedClass(String name, double from, double to) {
    Bed bed = catalogue.findBed(name).orElseThrow();
    double stone = bed.stoneM().orElseThrow();
    assertTrue(from <= bed.least() && bed.least() < stone, name);
    assertTrue(stone < bed.greatest() && bed.greatest() <= to, name);
    assertTrue(bed.manningN().isEmpty());
  }

  /** Common practice; thin-plate 1.84 in any hydraulics text. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "metal, 1.84, THIN_EDGE, 0.15",
    "stone, 1.60, FREE_OVERFALL, 0.30",
    "broad, 1.55, FREE_OVERFALL, 0.30",
    "boulders, 1.35, FREE_OVERFALL, 0.30"
  })
  void lipsHaveTheirUsualCoefficients(String name, double c, String brink, double band) {
    Lip lip = catalogue.findLip(name).orElseThrow();
    assertEquals(c, lip.coefficient());
    assertEquals(brink, lip.brink().name());
    assertEquals(band, lip.band(), 1e-12);
  }

  /** Borda and Carnot, over steps of one and two sizes of schedule 40 pipe. */
  @Test
  void reducersAndEnlargementsCoverStepsOfOneAndTwoSizes() {
    FittingLoss reducer = catalogue.findFitting("reducer", new Bore(0.04)).orElseThrow();
    FittingLoss enlargement = catalogue.findFitting("enlargement", new Bore(0.04)).orElseThrow();
    double reducers = 0;
    double enlargements = 0;
    int steps = 0;
    for (int step = 1; step <= 2; step++) {
      for (int i = 0; i + step < SIZES.size(); i++) {
        double ratio =
            scheduleFortyBore(SIZES.get(i)).areaM2()
                / scheduleFortyBore(SIZES.get(i + step)).areaM2();
        double contraction = 0.5 * (1 - ratio);
        double expansion = (1 - ratio) * (1 - ratio);
        assertTrue(reducer.least() <= contraction && contraction <= reducer.greatest());
        assertTrue(enlargement.least() <= expansion && expansion <= enlargement.greatest());
        reducers += contraction;
        enlargements += expansion;
        steps++;
      }
    }
    assertEquals(reducers / steps, reducer.lossCoefficient(), 0.02);
    assertEquals(enlargements / steps, enlargement.lossCoefficient(), 0.02);
  }

  private double fitting(String type, Bore bore) {
    return catalogue.findFitting(type, bore).orElseThrow().lossCoefficient();
  }

  /**
   * A handbook's table (globe valve with bevel seat 6.0, angle valve 2.0; from memory), the range
   * taking in Crane's n fT with n = 340 and 150; three-way valves Crane's n = 30 and 90 at 2 in; fT
   * 0.027 at 1/2 in, 0.019 at 2 in, 0.017 at 4 in.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "globe valve open, 340, 6.0",
    "angle valve open, 150, 2.0",
    "three-way valve straight, 30, 0.57",
    "three-way valve branch, 90, 1.71"
  })
  void valvesThatStandOpenCoverTheMultiplesOfFullyRoughFriction(
      String type, double multiple, double k) {
    FittingLoss valve = catalogue.findFitting(type, new Bore(0.05)).orElseThrow();
    assertEquals(k, valve.lossCoefficient(), 0.011);
    assertTrue(valve.least() <= 0.017 * multiple + 0.005, "least " + valve.least());
    assertTrue(0.027 * multiple <= valve.greatest() + 0.05, "greatest " + valve.greatest());
  }

  /** Contraction 0.5 (1 - r), enlargement (1 - r)² on the barb, r = (d/D)²; on the pipe by 1/r². */
  @ParameterizedTest(name = "{0} of the bore")
  @CsvSource({"0.80, 0.756", "0.84, 0.470", "0.88, 0.273"})
  void barbedCouplerIsTwoChangesOfBore(double share, double expected) {
    double ratio = share * share;
    double k = (0.5 * (1 - ratio) + (1 - ratio) * (1 - ratio)) / (ratio * ratio);
    assertEquals(expected, k, 0.001);
    FittingLoss coupler = catalogue.findFitting("barbed coupler", new Bore(0.04)).orElseThrow();
    assertTrue(coupler.least() <= k && k <= coupler.greatest());
    if (share == 0.84) {
      assertEquals(k, coupler.lossCoefficient(), 0.031);
    }
  }

  private CheckValveRow checkValve(String type, Bore bore) {
    return catalogue.findCheckValve(type, bore).orElseThrow();
  }

  private Bore scheduleFortyBore(String size) {
    return new Bore(catalogue.findPipe("PVC schedule 40", size + " in").orElseThrow().insideM());
  }
}
