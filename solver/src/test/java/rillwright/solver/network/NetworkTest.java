package rillwright.solver.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.water.Water;

class NetworkTest {
  private static final Water WATER = new Water(998.2, 1.004e-6, 2339);
  private static final Bore BORE = new Bore(0.05);

  private static Basin basin(String name, double level) {
    return new Basin(
        new PointName(name),
        level,
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private static Line line(String name, String from, String to, Part... parts) {
    LineEnd end = new LineEnd(EndLoss.OPEN_WATER, Optional.of(BORE));
    return new Line(
        new LineName(name),
        new PointName(from),
        new PointName(to),
        Optional.empty(),
        List.of(parts),
        end,
        end);
  }

  private static Network network(Line... lines) {
    return new Network(WATER, 0, List.of(basin("pond", 0.3), basin("pool", 2)), List.of(lines));
  }

  @Test
  void lawOfALineIsItsEndsAndPartsInSeries() {
    Line line = line("feed", "pond", "pool", new Fitting("elbow 90", 2, 0.9, BORE));
    Network network = network(line);
    assertEquals(3, network.lawsOf(line).size());
    HeadLaw law = network.lawOf(line);
    assertEquals((0.5 + 1.8 + 1) * BORE.velocityHeadAt(0.003), law.headLossAt(0.003), 1e-14);
    assertEquals(-law.headLossAt(0.003), law.headLossAt(-0.003), 1e-14);
  }

  @Test
  void skimmerSeesTheLevelOfTheBasinItsLineBeginsAt() {
    Skimmer skimmer = new Skimmer(0.3, OptionalDouble.empty(), 0.2, Skimmer.WITHOUT_DOOR, 0);
    Line line = line("intake", "pond", "pool", skimmer);
    double free = 2.0 / 3 * 0.6 * 0.3 * Math.sqrt(2 * 9.80665) * Math.pow(0.1, 1.5);
    assertEquals(free, network(line).lawOf(line).greatestFlow(), 1e-15);
  }

  @Test
  void velocityIsReportedInTheLinesPipeElseInItsFirstPartWithABore() {
    assertEquals(
        Optional.of(BORE), line("a", "pond", "pool", new Fitting("x", 1, 1, BORE)).mainBore());
    assertEquals(Optional.empty(), line("a", "pond", "pool").mainBore());
  }

  @Test
  void lineCanBeReplacedByAnotherOfItsName() {
    Network before = network(line("feed", "pond", "pool"), line("drain", "pool", "pond"));
    Line changed = line("feed", "pond", "pool", new Fitting("elbow 90", 1, 0.9, BORE));
    Network after = before.withLine(changed);
    assertEquals(changed, after.line(new LineName("feed")));
    assertEquals(
        List.of("feed", "drain"), after.lines().stream().map(line -> line.name().value()).toList());
    assertEquals(List.of(), before.line(new LineName("feed")).parts());
    assertThrows(
        IllegalArgumentException.class, () -> before.withLine(line("new", "pond", "pool")));
  }

  @Test
  void onePartOrPointCanBeReplaced() {
    Fitting elbow = new Fitting("elbow 90", 1, 0.9, BORE);
    Fitting sweep = new Fitting("sweep 90", 1, 0.4, BORE);
    Network before = network(line("feed", "pond", "pool", elbow, elbow));
    Network after = before.withPart(new LineName("feed"), 1, sweep);
    assertEquals(List.of(elbow, sweep), after.line(new LineName("feed")).parts());
    Network lower = after.withPoint(basin("pond", -1));
    assertEquals(basin("pond", -1), lower.point(new PointName("pond")));
    assertEquals(before.points().size(), lower.points().size());
    assertThrows(IllegalArgumentException.class, () -> before.withPoint(basin("lake", 0)));
  }

  @Test
  void namesAreUniqueAndLinesEndAtPoints() {
    assertThrows(
        IllegalArgumentException.class,
        () -> network(line("feed", "pond", "pool"), line("feed", "pool", "pond")));
    assertThrows(IllegalArgumentException.class, () -> network(line("feed", "pond", "lake")));
    List<Point> twice = List.of(basin("pond", 0), basin("pond", 1));
    assertThrows(IllegalArgumentException.class, () -> new Network(WATER, 0, twice, List.of()));
  }

  @Test
  void asksForPointsAndLinesThatAreThere() {
    Network network = network();
    PointName lake = new PointName("lake");
    LineName feed = new LineName("feed");
    assertThrows(IllegalArgumentException.class, () -> network.point(lake));
    assertThrows(IllegalArgumentException.class, () -> network.line(feed));
    assertEquals("pond", network.point(new PointName("pond")).name().value());
  }
}
