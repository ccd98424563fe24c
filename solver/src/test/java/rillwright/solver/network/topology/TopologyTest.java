package rillwright.solver.network.topology;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Draw;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.Seeded;
import rillwright.solver.law.Shut;
import rillwright.solver.law.skimmer.SkimmerLaw;
import rillwright.solver.network.Basin;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Tee;
import rillwright.solver.water.Water;

/** What hangs together in a network, and whether its draws can be met. */
class TopologyTest {
  private static final Water WATER = new Water(998.2, 1.004e-6, 2339);
  private static final LineEnd END = new LineEnd(EndLoss.NONE, Optional.empty());

  private final List<Point> points = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private final Map<PointName, Double> draws = new LinkedHashMap<>();
  private final Map<PointName, Double> starved = new LinkedHashMap<>();

  private void basin(String name) {
    points.add(
        new Basin(
            new PointName(name),
            0,
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty()));
  }

  private void tee(String name, double draw) {
    PointName point = new PointName(name);
    points.add(new Tee(point, OptionalDouble.empty(), draw));
    draws.put(point, draw);
  }

  private void outletInAir(String name) {
    points.add(
        new Outlet(
            new PointName(name),
            0,
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty()));
  }

  private void line(String name, String from, String to, HeadLaw law) {
    lines.add(
        new Line(
            new LineName(name),
            new PointName(from),
            new PointName(to),
            Optional.empty(),
            List.of(new Loss(law, Optional.empty())),
            END,
            END));
  }

  private Network network() {
    return new Network(WATER, 0, points, lines);
  }

  private Map<String, Double> unmet() {
    Map<String, Double> met = new LinkedHashMap<>();
    Network network = network();
    DrawCheck.unmet(new NetworkGraph(network), network::lawOf, starved, draws, Set.of())
        .forEach(draw -> met.put(draw.point().value(), draw.metM3PerS()));
    return met;
  }

  @Test
  void pointsWithoutAnyLineToALevelFloat() {
    basin("pond");
    tee("near", 0);
    tee("far", 0);
    tee("island", 0);
    tee("alone", 0);
    line("a", "pond", "near", NoLoss.bothWays());
    line("b", "far", "island", NoLoss.bothWays());
    assertEquals(
        List.of("far", "island", "alone"),
        new NetworkGraph(network()).floatingPoints().stream().map(PointName::value).toList());
  }

  @Test
  void linesAtAPointAreReportedInTheOrderOfTheFile() {
    basin("pond");
    tee("split", 0);
    line("one", "pond", "split", NoLoss.bothWays());
    line("two", "pond", "split", NoLoss.bothWays());
    line("back", "split", "pond", NoLoss.bothWays());
    assertEquals(
        List.of("one", "two", "back"),
        new NetworkGraph(network())
            .linesAt(new PointName("split")).stream().map(line -> line.name().value()).toList());
  }

  @Test
  void drawIsMetThroughLinesThatAllowItsDirection() {
    basin("pond");
    tee("tap", 0.003);
    line("feed", "pond", "tap", NoLoss.forwardOnly());
    assertEquals(Map.of(), unmet());
  }

  @Test
  void checkValveTheWrongWayRoundMeetsNothing() {
    basin("pond");
    tee("tap", 0.003);
    line("feed", "tap", "pond", NoLoss.forwardOnly());
    assertEquals(Map.of("tap", 0.0), unmet());
  }

  @Test
  void shutLineMeetsNothing() {
    basin("pond");
    tee("tap", 0.003);
    line("feed", "pond", "tap", new Shut());
    assertEquals(Map.of("tap", 0.0), unmet());
  }

  @Test
  void skimmersMeetWhatTheyCanPassTogether() {
    basin("pond");
    tee("tap", 0.005);
    line("one", "pond", "tap", new SkimmerLaw(0.001, 0.1));
    line("two", "pond", "tap", new SkimmerLaw(0.003, 0.1));
    Map<String, Double> unmet = unmet();
    assertEquals(List.of("tap"), List.copyOf(unmet.keySet()));
    assertEquals(0.004, unmet.get("tap"), 1e-12);
  }

  @Test
  void starvedChamberGivesOnlyWhatIsPutIn() {
    basin("pond");
    tee("chamber", -0.001);
    tee("tap", 0.002);
    starved.put(new PointName("chamber"), 0.0);
    line("intake", "pond", "chamber", NoLoss.forwardOnly());
    line("supply", "chamber", "tap", NoLoss.forwardOnly());
    Map<String, Double> unmet = unmet();
    assertEquals(List.of("tap"), List.copyOf(unmet.keySet()));
    assertEquals(0.001, unmet.get("tap"), 1e-12);
  }

  @Test
  void outletInAirTakesWhatIsPutInButGivesNothing() {
    outletInAir("end");
    tee("spring", -0.002);
    line("drain", "spring", "end", NoLoss.bothWays());
    assertEquals(Map.of(), unmet());
    points.remove(1);
    draws.clear();
    tee("spring", 0.002);
    assertEquals(Map.of("spring", 0.0), unmet());
  }

  @Test
  void whatIsPutInAtOnePlaceMayBeDrawnAtAnother() {
    tee("spring", -0.002);
    tee("tap", 0.002);
    line("pipe", "spring", "tap", NoLoss.bothWays());
    assertEquals(Map.of(), unmet());
  }

  /** A comb of tees on a one-way main, each with a draw of whatever size. */
  @Seeded
  void drawsOfAnySizeAreMetByAMainThatPassesAnyFlow(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    basin("pond");
    String before = "pond";
    double scale = Draw.between(random, 1e-12, 1);
    for (int i = 0; i < 12; i++) {
      tee("tee " + i, scale * Draw.between(random, 1e-3, 1));
      line("pipe " + i, before, "tee " + i, NoLoss.forwardOnly());
      before = "tee " + i;
    }
    assertEquals(Map.of(), unmet(), "seed " + seed + ", scale " + scale);
  }
}
