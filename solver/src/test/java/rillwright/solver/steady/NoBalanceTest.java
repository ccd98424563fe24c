package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rillwright.solver.steady.Sketch.check;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.shutValve;
import static rillwright.solver.steady.Sketch.skimmer;

import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.UnmetDraw;

/** Networks that cannot balance are refused by the names of their points. */
class NoBalanceTest {

  @Test
  void pointsThatNoLineJoinsToOpenWater() {
    Sketch sketch =
        new Sketch()
            .basin("pond", 0)
            .fall("fall", 1)
            .line("supply", "pond", "fall", pipe(5, 0.05))
            .tee("lost")
            .chamber("forgotten", 0)
            .line("between", "lost", "forgotten", pipe(5, 0.05))
            .tee("alone");
    NoBalance e = assertThrows(NoBalance.class, sketch::solve);
    NoBalance.FloatingPoints floating =
        assertInstanceOf(NoBalance.FloatingPoints.class, e.reason());
    assertEquals(
        List.of(new PointName("lost"), new PointName("forgotten"), new PointName("alone")),
        floating.points());
    assertEquals(
        "no balanced state: no line joins \"lost\" to a basin, a fall or an outlet; no line joins"
            + " \"forgotten\" to a basin, a fall or an outlet; no line joins \"alone\" to a basin,"
            + " a fall or an outlet",
        e.getMessage());
  }

  @Test
  void pointsBehindAShutValveDoNotFloat() {
    SteadyState state =
        new Sketch()
            .basin("pond", 0)
            .tee("T")
            .line("supply", "pond", "T", pipe(5, 0.05), shutValve())
            .solve();
    assertEquals(0, Sketch.flow(state, "supply"));
  }

  @Test
  void aDrawBehindACheckValve() {
    assertUnmet(
        supplied(pipe(5, 0.05), 1e-3)
            .tee("beyond", 2e-3)
            .line("back", "beyond", "T", pipe(5, 0.05), check(0)),
        new UnmetDraw(new PointName("beyond"), 2e-3, 0));
  }

  @Test
  void aDrawBehindAShutValve() {
    assertUnmet(supplied(shutValve(), 1e-3), new UnmetDraw(new PointName("T"), 1e-3, 0));
  }

  @Test
  void aDrawGreaterThanASkimmerPasses() {
    double most = 2.0 / 3 * 0.36 * 0.3 * Math.sqrt(2 * 9.80665) * Math.pow(0.1, 1.5);
    UnmetDraw unmet = onlyUnmet(supplied(skimmer(0.3, -0.1), 1.01 * most));
    assertEquals(new PointName("T"), unmet.point());
    assertEquals(1.01 * most, unmet.drawM3PerS());
    assertEquals(most, unmet.metM3PerS(), 1e-10 * most);
  }

  @Test
  void aDrawJustLessThanASkimmerPassesIsMet() {
    double most = 2.0 / 3 * 0.36 * 0.3 * Math.sqrt(2 * 9.80665) * Math.pow(0.1, 1.5);
    for (double share : new double[] {0.9, 0.999, 0.999999, 1 - 1e-9, 1 - 1e-12}) {
      SteadyState state = supplied(skimmer(0.3, -0.1), share * most).solve();
      assertEquals(share * most, Sketch.flow(state, "supply"), 1e-12 * most);
      assertEquals(List.of(), BalanceAudit.faults(state));
    }
  }

  @Test
  void aTrickleIsHeldToTheSameMeasure() {
    supplied(pipe(5, 0.05), 1e-11).solve();
    assertUnmet(supplied(shutValve(), 1e-11), new UnmetDraw(new PointName("T"), 1e-11, 0));
  }

  @Test
  void whatIsPutInAndCannotLeave() {
    assertUnmet(supplied(check(0), -1e-3), new UnmetDraw(new PointName("T"), -1e-3, 0));
  }

  @Test
  void whatIsPutInCanLeaveOverAFall() {
    SteadyState state =
        supplied(check(0), -1e-3).fall("fall", 2).line("over", "T", "fall", pipe(1, 0.05)).solve();
    assertEquals(1e-3, Sketch.outflow(state, "fall"), 1e-14);
    assertEquals(0, Sketch.flow(state, "supply"));
  }

  @Test
  void onlyTheDrawThatCannotBeMetIsNamed() {
    assertUnmet(
        supplied(pipe(5, 0.05), -1e-3)
            .tee("beyond", 2e-3)
            .line("back", "beyond", "T", pipe(5, 0.05), check(0)),
        new UnmetDraw(new PointName("beyond"), 2e-3, 0));
  }

  @Test
  void whatIsPutInMayBeDrawnElsewhereWithoutOpenWater() {
    SteadyState state =
        supplied(shutValve(), -1e-3)
            .tee("beyond", 1e-3)
            .line("on", "T", "beyond", pipe(5, 0.05))
            .solve();
    assertEquals(1e-3, Sketch.flow(state, "on"), 1e-15);
    assertEquals(false, Sketch.isDetermined(state, "beyond"));
    assertEquals(List.of(), BalanceAudit.faults(state));
  }

  @Test
  void aDrawThatAStarvedChamberCannotBring() {
    Sketch sketch =
        new Sketch()
            .basin("pond", 0)
            .chamber("chamber", -0.08)
            .tee("T", 6.6e-3)
            .line("intake", "pond", "chamber", skimmer(0.2, -0.1))
            .line("supply", "chamber", "T", pipe(5, 0.05));
    assertEquals(new PointName("T"), onlyUnmet(sketch).point());
  }

  @Test
  void anImposedFlowThatCannotComeIsADraw() {
    Sketch sketch =
        supplied(pipe(5, 0.05), 0)
            .basin("upper", 2)
            .line("lift", "T", "upper", pipe(5, 0.05))
            .tee("U")
            .line("blocked", "U", "T", pipe(1, 0.05), check(0))
            .line("imposed", "U", "upper", pipe(1, 0.05));
    NoBalance e =
        assertThrows(
            NoBalance.class,
            () ->
                SteadyStateFinder.impose(
                    sketch.network(), Imposed.flow(new LineName("imposed"), 1e-3)));
    assertEquals(
        new NoBalance.UnmetDraws(List.of(new UnmetDraw(new PointName("U"), 1e-3, 0))), e.reason());
    assertEquals(
        "no balanced state: the draw at \"U\" is 0.001 m³/s, of which its lines can carry 0.0 m³/s",
        e.getMessage());
  }

  private static Sketch supplied(Part part, double draw) {
    return new Sketch().basin("pond", 0).tee("T", draw).line("supply", "pond", "T", part);
  }

  private static UnmetDraw onlyUnmet(Sketch sketch) {
    NoBalance e = assertThrows(NoBalance.class, sketch::solve);
    NoBalance.UnmetDraws unmet = assertInstanceOf(NoBalance.UnmetDraws.class, e.reason());
    assertEquals(1, unmet.draws().size());
    return unmet.draws().get(0);
  }

  private static void assertUnmet(Sketch sketch, UnmetDraw expected) {
    assertEquals(expected, onlyUnmet(sketch));
  }
}
