package rillwright.solver.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.BasinShape.Row;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Ponds that are held at their level although nothing brings back what they give. */
class HeldBasinDetectorTest {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
  private static final double AREA_M2 = 30;

  private static Basin pond(String name, double levelM) {
    BasinShape shape = new BasinShape(List.of(new Row(levelM, AREA_M2)));
    return new Basin(new PointName(name), levelM, Optional.of(shape), UNKNOWN, UNKNOWN, UNKNOWN);
  }

  private static List<Finding> foundIn(SteadyState state) {
    return Findings.of(state).stream()
        .filter(finding -> finding.code().equals("held-basin-needs-inflow"))
        .toList();
  }

  private static NetworkBuilder above(double levelM) {
    return new NetworkBuilder().point(pond("header", levelM));
  }

  /** An inch of 30 m² is 0.762 m³; it lasts as long as that is above the flow. */
  @Test
  void whatRunsDownDoesNotComeBackByItself() {
    Network network =
        above(2)
            .fall("fall", 1, new PowerWeir(1.6, 0.5, BrinkRule.FREE_OVERFALL))
            .line("main", "header", "fall", LineParts.in(Pipe.of(0.08, 1.5e-6)).run(20))
            .build();
    SteadyState state = SteadyStateFinder.find(network);
    double flow = state.line(network.lines().get(0).name()).flowM3PerS();
    Finding found = foundIn(state).get(0);

    assertEquals("header", found.at());
    assertEquals(flow, found.figures().get(0).value(), 1e-12);
    assertEquals(AREA_M2 * 0.0254 / flow, found.figures().get(2).value(), 1e-6);
    assertEquals(
        List.of(), foundIn(SteadyStateFinder.find(network.withPoint(withoutArea(2, "header")))));
  }

  private static Basin withoutArea(double levelM, String name) {
    return new Basin(new PointName(name), levelM, Optional.empty(), UNKNOWN, UNKNOWN, UNKNOWN);
  }

  @Test
  void pondBelowGainsWhatTheOneAboveGives() {
    Network network =
        above(2)
            .point(pond("lower", 0))
            .line("main", "header", "lower", LineParts.in(Pipe.of(0.08, 1.5e-6)).run(20))
            .build();
    assertEquals(
        List.of("header"),
        foundIn(SteadyStateFinder.find(network)).stream().map(Finding::at).toList());
  }

  @Test
  void whatIsPumpedOverAFallComesBackUnlessItReturnsElsewhere() {
    Network garden = SmallGarden.QUIET.network().withPoint(pond("pond", 0));
    assertEquals(List.of(), foundIn(SteadyStateFinder.find(garden)));

    Fall fall = (Fall) garden.point(new PointName("fall"));
    Fall elsewhere =
        new Fall(
            fall.name(),
            fall.crestM(),
            fall.weir(),
            fall.depthBand(),
            fall.targetM3PerS(),
            Optional.of(new PointName("creek")));
    List<Point> points = new ArrayList<>(garden.withPoint(elsewhere).points());
    points.add(withoutArea(0.5, "creek"));
    assertEquals(1, foundIn(SteadyStateFinder.find(garden.with(points, garden.lines()))).size());
  }
}
