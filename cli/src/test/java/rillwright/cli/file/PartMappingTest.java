package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.file.fault.Place;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.ValveLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;

/** What each kind of part becomes. */
class PartMappingTest {
  private static final Bore PIPE = new Bore(0.05);

  private static Project project(String part) {
    return ProjectText.read(
        ProjectText.POINTS
            + "  line: {from: pond, to: low, pipe: {inside: 50 mm, factor: 0.02}, parts: [{"
            + part
            + "}, run: 1 m]}\n"
            + "pumps:\n  demo 40: pumps/demo-40.csv\n");
  }

  private static Part part(String text) {
    return ProjectText.partOf(project(text), 0);
  }

  @Test
  void runs() {
    assertEquals(11.5824, ((Run) part("run: 38 ft")).lengthM(), 1e-12);
    assertEquals(part("run: 38 ft"), part("run: {length: 38 ft}"));
  }

  /** Slime takes from the bore of the pipe, whoever says its size. */
  @Test
  void depositTakesFromTheBore() {
    assertEquals(
        0.047, ((Run) part("run: {length: 1 m, deposit: 3 mm}")).inside().diameterM(), 1e-12);
    assertEquals(
        0.036,
        ((Run) part("run: {length: 1 m, inside: 40 mm, deposit: 4 mm}")).inside().diameterM(),
        1e-12);
  }

  @Test
  void fittingsByKOrType() {
    VelocityHeadLoss loss = new VelocityHeadLoss(0.4, PIPE);
    assertEquals(new Fitting("fitting", 3, loss, true), part("fitting: {k: 0.4, count: 3}"));
    assertEquals(new Fitting("fitting", 1, loss, true), part("fitting: {k: 0.4}"));
    // The catalogue's own row: elbow 90, any size, K 0.9.
    assertEquals(
        new Fitting("elbow 90", 3, 0.57, PIPE), part("fitting: {type: elbow 90, count: 3}"));
    assertEquals(new Fitting("elbow 90", 1, 1.1, PIPE), part("fitting: {type: elbow 90, k: 1.1}"));
  }

  @Test
  void valvesByOpeningOrK() {
    assertEquals(
        new Valve("ball valve", opening(ValveTravel.BALL, 0.057, 0.6), PIPE, true),
        part("valve: {type: ball, open: 60 %, adjustable: yes}"));
    assertEquals(
        new Valve("gate valve", opening(ValveTravel.GATE, 0.152, 1), PIPE, false),
        part("valve: {type: gate, open: 100 %}"));
    assertEquals(
        new Valve("valve", new Valve.GivenLoss(2.5), PIPE, false), part("valve: {k: 2.5}"));
    assertEquals(true, ((Valve) part("valve: {type: butterfly, open: 0 %}")).isShut());
  }

  /** K when open is 3 and 8 times fT, 0.019 in 50 mm (Crane, Technical Paper 410). */
  private static Valve.Opening opening(ValveTravel travel, double openK, double open) {
    return new Valve.Opening(new ValveLoss(travel, openK), open);
  }

  @Test
  void checkValvesByKOrType() {
    assertEquals(
        new CheckValve("check valve", 0.15, 2, PIPE),
        part("check valve: {k: 2, cracking head: 15 cm}"));
    assertEquals(new CheckValve("check valve", 0, 2, PIPE), part("check valve: {k: 2}"));
    // The catalogue's own row: swing, K 100 fT, cracking head 0.
    assertEquals(
        new CheckValve("swing check valve", 0, 1.9, PIPE, true),
        part("check valve: {type: swing}"));
    assertEquals(
        new CheckValve("swing check valve", 0.1, 3, PIPE, true),
        part("check valve: {type: swing, k: 3, cracking head: 10 cm}"));
  }

  @Test
  void skimmers() {
    assertEquals(
        new Skimmer(0.3048, OptionalDouble.of(0.1524), -0.127, 0.36, 0.1),
        rounded(
            (Skimmer) part("skimmer: {width: 12 in, height: 6 in, sill: -5 in, clogged: 10 %}")));
    assertEquals(
        new Skimmer(1, OptionalDouble.empty(), 0, 0.6, 0),
        part("skimmer: {width: 1 m, sill: 0 m, door: no}"));
    assertEquals(
        new Skimmer(1, OptionalDouble.empty(), 0, 0.5, 0),
        part("skimmer: {width: 1 m, sill: 0 m, door: no, discharge coefficient: 0.5}"));
  }

  private static Skimmer rounded(Skimmer skimmer) {
    return new Skimmer(
        Math.rint(skimmer.widthM() * 1e6) / 1e6,
        OptionalDouble.of(Math.rint(skimmer.heightM().orElseThrow() * 1e6) / 1e6),
        skimmer.sillM(),
        skimmer.dischargeCoefficient(),
        skimmer.clogged());
  }

  @Test
  void filtersByRating() {
    Filter filter =
        (Filter)
            part(
                "filter: {rating: {flow: 9 m3/h, head: 0.9 m, exponent: 1.8}, clogged: 20 %, open"
                    + " top: 14 in, holds: 20 L}");
    assertEquals(0.9, filter.clean().headLossAt(9 / 3600.0), 1e-12);
    assertEquals(0.9 * Math.pow(2, 1.8), filter.clean().headLossAt(18 / 3600.0), 1e-12);
    assertEquals(0.2, filter.clogged());
    assertEquals(0.3556, filter.openTopM().orElseThrow(), 1e-12);
    assertEquals(0.02, filter.holdsM3());
    Filter usual = (Filter) part("filter: {rating: {flow: 1 m3/h, head: 1 m}}");
    assertEquals(4, usual.clean().headLossAt(2 / 3600.0), 1e-12);
  }

  @Test
  void filtersByPointsGoThroughTwoExactly() {
    Filter filter =
        (Filter)
            part(
                "filter: {points: [{flow: 0 m3/h, head: 0 m}, {flow: 1 m3/h, head: 1 m}, {flow: 2"
                    + " m3/h, head: 3 m}]}");
    assertEquals(1, filter.clean().headLossAt(1 / 3600.0), 1e-9);
    assertEquals(3, filter.clean().headLossAt(2 / 3600.0), 1e-9);
  }

  @Test
  void pumpsByNameAndWithOptions() {
    Pump plain = (Pump) part("pump: demo 40");
    assertEquals("demo 40", plain.model());
    assertEquals(1, plain.set().speed());
    assertEquals(1, plain.set().count());
    assertEquals(Optional.empty(), plain.set().runsBack());
    // First row of the sheet: no flow at 31 ft.
    assertEquals(31 * 0.3048, plain.set().headAt(0), 1e-9);
    Pump pair =
        (Pump)
            part(
                "pump: {model: demo 40, speed: 80 %, count: 2, arranged: series, runs back: {k:"
                    + " 15}}");
    assertEquals(0.8, pair.set().speed());
    assertEquals(2, pair.set().count());
    assertEquals(PumpSet.Arrangement.SERIES, pair.set().arrangement());
    assertEquals(Optional.of(new VelocityHeadLoss(15, PIPE)), pair.set().runsBack());
  }

  @Test
  void aPumpToBeChosenIsPlannedAndKnowsItsPlace() {
    Project project = project("pump: to be chosen");
    assertInstanceOf(PlannedPump.class, ProjectText.partOf(project, 0));
    assertEquals(new Place("pond.yaml", 12, 77), project.places().ofPart(new LineName("line"), 0));
    assertInstanceOf(PlannedPump.class, part("pump: {model: to be chosen}"));
  }

  @Test
  void gaugesAndHighPoints() {
    assertEquals(
        new Gauge("G1", 0.5, Optional.of(PIPE)), part("gauge: {name: G1, elevation: 50 cm}"));
    assertEquals(new HighPoint(2, Optional.of(PIPE)), part("high point: 2 m"));
    assertEquals(new HighPoint(2, Optional.of(PIPE)), part("high point: {elevation: 2 m}"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{flow: 1 m3/h, head: 2 m} | 8",
        "{flow: 1 m3/h, head: 2 m, exponent: 1} | 4",
        "{points: [{flow: 1 m3/h, head: 2 m}]} | 4",
        "{points: [{flow: 0 m3/h, head: 0 m}, {flow: 2 m3/h, head: 5 m}]} | 5",
        "{points: [{flow: 1 m3/h, head: 2 m}, {flow: 2 m3/h, head: 7 m}]} | 7"
      })
  void lossesAtTwiceTheirFlow(String loss, double headM) {
    Loss part = (Loss) part("loss: " + loss);
    assertEquals(headM, part.law().headLossAt(2 / 3600.0), 1e-9);
    assertEquals(-headM, part.law().headLossAt(-2 / 3600.0), 1e-9);
  }

  @Test
  void lossesByK() {
    assertEquals(
        new Loss(new VelocityHeadLoss(2.5, PIPE), Optional.of(PIPE), true), part("loss: {k: 2.5}"));
  }

  @Test
  void aPressureWhereAHeadIsAskedIsDividedByDensityAndGravity() {
    Project project =
        ProjectText.read(
            "water: {density: 1000 kg/m3, viscosity: 1e-6 m2/s}\n"
                + ProjectText.POINTS
                + "  line: {from: pond, to: low, parts: [loss: {flow: 1 m3/h, head: 1 bar}]}\n");
    Loss loss = (Loss) ProjectText.partOf(project, 0);
    assertEquals(1e5 / (1000 * 9.80665), loss.law().headLossAt(1 / 3600.0), 1e-9);
  }

  @Test
  void quantitiesThatAreNotKnownExactlyAreKept() {
    Project project = project("run: 60 ft ± 5 ft");
    assertEquals(18.288, ((Run) ProjectText.partOf(project, 0)).lengthM(), 1e-12);
    assertEquals(
        List.of("line \"line\": run"), project.uncertain().stream().map(q -> q.what()).toList());
  }
}
