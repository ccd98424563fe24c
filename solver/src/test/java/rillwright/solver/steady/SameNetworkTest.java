package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;

/** The same network described otherwise has the same flows. */
class SameNetworkTest {
  private static final int SEEDS = 400;
  private static final long FIRST_SEED = 500_000;

  /**
   * Flow, m³/s, that is as good as none: where losses go with the square of the flow, it takes less
   * head than the heads have digits.
   */
  private static final double AT_REST = 1e-9;

  /** Another telling, and what each flow is called in it. */
  private record Redescribed(Network network, UnaryOperator<String> nameOf, List<String> turned) {}

  private interface Telling {
    Redescribed of(Network network, Random random);
  }

  @Test
  void pointsAndLinesInAnotherOrder() {
    assertSameFlows(
        (network, random) -> {
          List<Point> points = new ArrayList<>(network.points());
          List<Line> lines = new ArrayList<>(network.lines());
          Collections.shuffle(points, random);
          Collections.shuffle(lines, random);
          return new Redescribed(
              new Network(network.water(), 0, points, lines), UnaryOperator.identity(), List.of());
        });
  }

  @Test
  void whatIsLikeAnotherIsNotAnalysedAgain() {
    Network network = RandomNetwork.of(1);
    SteadyState state = SteadyStateFinder.find(network);
    Network other = new Network(network.water(), 0, network.points(), network.lines());
    assertSame(
        state.near().edges().orElseThrow(),
        SteadyStateFinder.find(other, state).near().edges().orElseThrow());
    List<Line> turned = new ArrayList<>(network.lines());
    Collections.reverse(turned);
    Network rearranged = new Network(network.water(), 0, network.points(), turned);
    assertNotSame(
        state.near().edges().orElseThrow(),
        SteadyStateFinder.find(rearranged, state).near().edges().orElseThrow());
  }

  /**
   * A starved chamber is searched for anew each time, by balances of which each is like another.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void whatBeginsAtItsOwnFlowsIsTheSameInFewerSteps(boolean starved) {
    int steps = 0;
    int fewer = 0;
    int unbalanced = 0;
    for (long seed = FIRST_SEED; seed < FIRST_SEED + 4 * SEEDS; seed++) {
      try {
        Network network = RandomNetwork.of(seed);
        SteadyState state = SteadyStateFinder.find(network);
        if (state.starves() != starved || startsByRounding(state)) {
          continue;
        }
        SteadyState again = SteadyStateFinder.find(network, state);
        steps += state.iterations();
        fewer += again.iterations();
        for (Line line : network.lines()) {
          assertEquals(
              state.line(line.name()).flowM3PerS(),
              again.line(line.name()).flowM3PerS(),
              AT_REST,
              () -> "in " + line.name());
        }
      } catch (NoBalance none) {
        unbalanced++;
      }
    }
    assertTrue(steps > SEEDS && unbalanced < SEEDS, "too few were balanced");
    assertTrue(fewer < (starved ? 0.95 : 0.6) * steps, fewer + " steps of " + steps);
  }

  @Test
  void otherNames() {
    assertSameFlows(
        (network, random) -> {
          List<Point> points = network.points().stream().map(SameNetworkTest::renamed).toList();
          List<Line> lines = network.lines().stream().map(SameNetworkTest::renamed).toList();
          return new Redescribed(
              new Network(network.water(), 0, points, lines),
              name -> name.startsWith("at ") ? "at " + other(name.substring(3)) : other(name),
              List.of());
        });
  }

  @Test
  void linesDrawnTheOtherWay() {
    assertSameFlows(
        (network, random) -> {
          List<String> turned = new ArrayList<>();
          List<Line> lines = new ArrayList<>();
          for (Line line : network.lines()) {
            boolean turn = random.nextBoolean() && isSameBothWays(network, line);
            lines.add(turn ? turned(line) : line);
            if (turn) {
              turned.add(line.name().value());
            }
          }
          return new Redescribed(
              new Network(network.water(), 0, network.points(), lines),
              UnaryOperator.identity(),
              turned);
        });
  }

  @Test
  void solvedTwiceToTheLastBit() {
    for (long seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
      assertEquals(answer(RandomNetwork.of(seed)), answer(RandomNetwork.of(seed)), "seed " + seed);
    }
  }

  /** All numbers of an answer, or why there is none. */
  private static List<Object> answer(Network network) {
    try {
      SteadyState state = SteadyStateFinder.find(network);
      List<Object> numbers = new ArrayList<>();
      state.points().forEach(point -> numbers.add(List.of(point.headM(), point.outflowM3PerS())));
      state.lines().forEach(line -> numbers.add(List.of(line.flowM3PerS(), line.headLossM())));
      numbers.add(List.of(state.iterations(), state.flowErrorM3PerS(), state.headErrorM()));
      return numbers;
    } catch (NoBalance e) {
      return List.of(e.reason());
    }
  }

  private static void assertSameFlows(Telling telling) {
    List<String> faults = new ArrayList<>();
    int compared = 0;
    for (long seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
      Network network = RandomNetwork.of(seed);
      Redescribed redescribed = telling.of(network, new Random(seed));
      Map<String, Double> flows = flows(network);
      Map<String, Double> again = flows(redescribed.network());
      if (flows.isEmpty() != again.isEmpty() && !climbs(network)) {
        faults.add("seed " + seed + ": only one telling has a balance");
      }
      if (flows.isEmpty() || again.isEmpty()) {
        continue;
      }
      compared += flows.size();
      double largest = flows.values().stream().mapToDouble(Math::abs).max().orElse(0);
      double tolerance = Math.max(1e-7 * largest, AT_REST);
      for (Map.Entry<String, Double> flow : flows.entrySet()) {
        double sign = redescribed.turned().contains(flow.getKey()) ? -1 : 1;
        double other = sign * again.get(redescribed.nameOf().apply(flow.getKey()));
        if (!(Math.abs(flow.getValue() - other) <= tolerance)) {
          faults.add(
              "seed " + seed + ", " + flow.getKey() + ": " + flow.getValue() + " and " + other);
        }
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(compared > 10 * SEEDS, "too few flows compared");
  }

  /**
   * Flows of all lines and points by name; empty without a balance, or where rounding decides which
   * lines start, since nothing determines the heads at the points that feed them.
   */
  private static Map<String, Double> flows(Network network) {
    Map<String, Double> flows = new HashMap<>();
    try {
      SteadyState state = SteadyStateFinder.find(network);
      if (startsByRounding(state)) {
        return Map.of();
      }
      state.lines().forEach(line -> flows.put(line.line().name().value(), line.flowM3PerS()));
      state
          .points()
          .forEach(point -> flows.put("at " + point.point().name(), point.outflowM3PerS()));
    } catch (NoBalance e) {
      return Map.of();
    }
    return flows;
  }

  private static boolean climbs(Network network) {
    return network.lines().stream().anyMatch(line -> !line.climbs().isEmpty());
  }

  private static boolean startsByRounding(SteadyState state) {
    boolean climbs =
        state.lines().stream().anyMatch(line -> !(line.course() instanceof Course.Full));
    return climbs && state.points().stream().anyMatch(point -> !point.isDetermined());
  }

  private static boolean isSameBothWays(Network network, Line line) {
    return line.parts().stream()
        .allMatch(
            part ->
                !(part instanceof Skimmer) && isSameBothWays(part.law(network.settingOf(line))));
  }

  private static boolean isSameBothWays(HeadLaw law) {
    boolean bounds = law.leastFlow() == -law.greatestFlow();
    return bounds && (law.greatestFlow() == 0 || law.headLossAt(1e-3) == -law.headLossAt(-1e-3));
  }

  private static Line turned(Line line) {
    List<Part> parts = new ArrayList<>(line.parts());
    Collections.reverse(parts);
    return new Line(
        line.name(), line.to(), line.from(), line.pipeBore(), parts, line.exit(), line.entrance());
  }

  private static String other(String name) {
    return new StringBuilder(name).reverse() + " again";
  }

  private static PointName other(PointName name) {
    return new PointName(other(name.value()));
  }

  private static Line renamed(Line line) {
    return new Line(
        new LineName(other(line.name().value())),
        other(line.from()),
        other(line.to()),
        line.pipeBore(),
        line.parts(),
        line.entrance(),
        line.exit());
  }

  private static Point renamed(Point point) {
    PointName name = other(point.name());
    if (point instanceof Basin b) {
      return new Basin(
          name,
          b.levelM(),
          b.shape(),
          b.overflowM(),
          b.gradeM(),
          b.linerEdgeM(),
          b.leastLevelM(),
          b.evaporatesM2(),
          b.fullOfStone());
    } else if (point instanceof Chamber c) {
      return new Chamber(name, c.floorM(), c.intakeM(), c.topM(), c.areaM2());
    } else if (point instanceof Tee t) {
      return new Tee(name, t.elevationM(), t.drawM3PerS());
    } else if (point instanceof Fall f) {
      return new Fall(name, f.crestM(), f.weir(), f.depthBand(), f.targetM3PerS(), f.returnsTo());
    }
    Outlet o = (Outlet) point;
    return new Outlet(name, o.elevationM(), o.levelM(), o.nozzle(), o.targetM3PerS());
  }
}
