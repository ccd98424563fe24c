package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.HighPoint.Air;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.topology.NetworkGraph;

/**
 * Finds which lines start over their high points, and which of those run full. Lines with high
 * points carry nothing at first and are let run one by one, the one with the lowest high point
 * first; one that runs stays running. Then, the one with the least pressure first, a line under
 * suction at a high point from which the air is not swept ends there in air; and so on until no
 * more of them start.
 *
 * <p>A high point upstream of the first pump of its line does not count here: the pump must suck
 * over it. Nor does a line that is primed by hand.
 */
final class Climbing {
  /** Suction less than this, m, is below any measurement. */
  private static final double NOTICEABLE_M = 1e-9;

  /** Balances kept: those of all lines of a large network would fill the memory. */
  private static final int MOST_KEPT = 50;

  /** Finds the balance with some courses. */
  @FunctionalInterface
  interface Finder {
    /**
     * Finds it.
     *
     * @param near flows near which its own are, where the last one ended
     */
    Outcome find(Map<LineName, Course> courses, Model.Near near);
  }

  /** A balance: its effort, and its state in the words of the network. */
  interface Outcome {
    /** Newton steps that it took. */
    int iterations();

    /** Where it ended: the next one is like it. */
    Model.Near near();

    /**
     * Its state.
     *
     * @param courses that come to the same as those it was found with
     * @param iterations Newton steps of all that led to it
     */
    SteadyState with(Map<LineName, Course> courses, int iterations);
  }

  private final Network network;
  private final NetworkGraph graph;
  private final Imposed imposed;
  private final Finder finder;
  private final Map<LineName, Map<Integer, HighPoint>> judged = new LinkedHashMap<>();
  private final Map<LineName, Course> courses = new LinkedHashMap<>();

  private int iterations;
  private Model.Near near;

  /** Balances of late by what changes them: a few are asked for again. */
  private final Map<Map<LineName, Course>, Outcome> known = new LinkedHashMap<>();

  /**
   * A network that may climb.
   *
   * @param near flows near which the first balance is
   * @param finder the balance with the courses of the lines that do not run full
   */
  Climbing(NetworkGraph graph, Imposed imposed, Model.Near near, Finder finder) {
    this.near = near;
    this.network = graph.network();
    this.graph = graph;
    this.imposed = imposed;
    this.finder = finder;
    network.lines().stream()
        .filter(line -> line.parts().stream().anyMatch(HighPoint.class::isInstance))
        .filter(line -> !imposed.lineFlowM3PerS().containsKey(line.name()))
        .forEach(this::judge);
  }

  private void judge(Line line) {
    HeadLaw law = network.lawOf(line);
    boolean shut = law.greatestFlow() <= 0 && law.leastFlow() >= 0;
    Map<Integer, HighPoint> points = line.climbs();
    boolean primed = points.values().stream().anyMatch(point -> point.air() == Air.PRIMED);
    if (!shut && !primed && !points.isEmpty()) {
      judged.put(line.name(), points);
    }
  }

  /**
   * The steady state.
   *
   * @throws NoBalance if there is none
   */
  SteadyState settle() {
    if (judged.isEmpty()) {
      return state(courses);
    }
    List<LineName> waiting = new ArrayList<>(judged.keySet());
    waiting.sort(Comparator.comparingDouble(this::highestM));
    waiting.forEach(line -> courses.put(line, new Course.NotStarted(0, OptionalDouble.empty())));
    SteadyState state = vented(started(waiting));
    for (int left = judged.size(); waiting.size() < left && !waiting.isEmpty(); ) {
      // Air in a line that runs lets the water stand higher upstream of others.
      left = waiting.size();
      courses.values().removeIf(Course.Swept.class::isInstance);
      state = vented(started(waiting));
    }
    return state;
  }

  /** Lets lines run that start, one by one; they are taken out of those that wait. */
  private SteadyState started(List<LineName> waiting) {
    while (true) {
      Optional<SteadyState> state = Optional.empty();
      Optional<NoBalance> unbalanced = Optional.empty();
      try {
        state = Optional.of(state(courses));
      } catch (NoBalance withoutThem) {
        unbalanced = Optional.of(withoutThem);
      }
      Reach reach = new Reach(graph, imposed, state, Set.copyOf(waiting));
      Optional<LineName> starting = Optional.empty();
      for (LineName name : waiting) {
        Optional<Course.NotStarted> barrier = reach.barrierIn(network.line(name), judged.get(name));
        if (barrier.isEmpty()) {
          starting = Optional.of(name);
          break;
        }
        courses.put(name, barrier.get());
      }
      if (starting.isPresent()) {
        waiting.remove(starting.get());
        courses.remove(starting.get());
      } else if (unbalanced.isPresent()) {
        throw unbalanced.get();
      } else {
        return waiting.isEmpty() ? state.orElseThrow() : state(courses);
      }
    }
  }

  /** The steady state with some courses. */
  private SteadyState state(Map<LineName, Course> with) {
    Map<LineName, Course> plain = plainly(with);
    Outcome shown = known.get(plain);
    if (shown == null) {
      shown = finder.find(plain, near);
      near = shown.near();
      iterations += shown.iterations();
      if (known.size() == MOST_KEPT) {
        known.remove(known.keySet().iterator().next());
      }
      known.put(plain, shown);
    }
    return shown.with(Map.copyOf(with), iterations);
  }

  /**
   * What of them changes the balance: neither how high water comes in a line that does not start,
   * nor whether it takes the air along in one that runs full.
   */
  private static Map<LineName, Course> plainly(Map<LineName, Course> courses) {
    Map<LineName, Course> plain = new LinkedHashMap<>();
    courses.forEach(
        (line, course) -> {
          if (course instanceof Course.NotStarted) {
            plain.put(line, new Course.NotStarted(0, OptionalDouble.empty()));
          } else if (course instanceof Course.Vented) {
            plain.put(line, course);
          }
        });
    return plain;
  }

  private double highestM(LineName line) {
    return judged.get(line).values().stream()
        .mapToDouble(HighPoint::elevationM)
        .max()
        .orElseThrow();
  }

  /** A high point of a line. */
  private record Place(LineName line, int index) {}

  /** What the water is under at a high point: its pressure head, m. */
  private record Suction(Place place, double pressureHeadM) {}

  private SteadyState vented(SteadyState started) {
    SteadyState state = started;
    Map<Place, Course.Swept> swept = new LinkedHashMap<>();
    while (true) {
      Optional<Place> next = strongestSuction(state, swept.keySet());
      if (next.isEmpty()) {
        swept.forEach((place, course) -> courses.putIfAbsent(place.line, course));
        return swept.isEmpty() ? state : state(courses);
      }
      Place place = next.get();
      double full = state.line(place.line).flowM3PerS();
      Map<LineName, Course> tried = new LinkedHashMap<>(courses);
      tried.put(place.line, new Course.Vented(place.index, full > 0, Math.abs(full)));
      Optional<SteadyState> vented;
      try {
        vented = Optional.of(state(tried));
      } catch (NoBalance restNeedsAllOfIt) {
        vented = Optional.empty();
      }
      double left = vented.map(air -> air.line(place.line).flowM3PerS()).orElse(full);
      if (vented.isEmpty() || network.line(place.line).sweepsAirFrom(place.index, left)) {
        swept.put(place, new Course.Swept(place.index, Math.abs(left)));
      } else {
        courses.putAll(tried);
        state = vented.get();
        swept.clear();
      }
    }
  }

  private Optional<Place> strongestSuction(SteadyState state, Set<Place> swept) {
    List<Suction> found = new ArrayList<>();
    judged.forEach(
        (name, points) -> {
          LineState line = state.line(name);
          points.forEach(
              (index, point) -> {
                OptionalDouble head = line.parts().get(index).headBeforeM();
                boolean atVent =
                    line.course() instanceof Course.Vented vented && vented.highPoint() == index;
                if (line.flowM3PerS() != 0 && head.isPresent() && !atVent) {
                  found.add(
                      new Suction(
                          new Place(name, index),
                          point.pressureHeadM(head.getAsDouble(), line.flowM3PerS())));
                }
              });
        });
    return found.stream()
        .filter(suction -> suction.pressureHeadM < -NOTICEABLE_M)
        .filter(suction -> !swept.contains(suction.place))
        .min(Comparator.comparingDouble(Suction::pressureHeadM))
        .map(Suction::place);
  }
}
