package rillwright.solver.steady;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.NetworkGraph;
import rillwright.solver.network.topology.UnmetDraw;

/**
 * Finds the steady state of a network.
 *
 * <p>A chamber is never drawn below its intake. Where the balance would, it is starved: what enters
 * it sees the intake's level, and what leaves it draws as from a lower level at which it takes
 * exactly what comes in.
 *
 * <p>Which lines start over their high points, and which run full downstream of them, {@link
 * Climbing} finds by balances.
 */
public final class SteadyStateFinder {
  /**
   * A chamber is starved if it stands lower than its intake by more than this, m: below any
   * measurement.
   */
  private static final double NOTICEABLE_M = 1e-9;

  private final NetworkGraph written;
  private final Imposed imposed;
  private final RunningNetwork running;
  private final Model model;
  private final InflowSearch search;

  private SteadyStateFinder(
      NetworkGraph written, Imposed imposed, Map<LineName, Course> courses, Model.Near near) {
    this.written = written;
    this.imposed = imposed;
    this.running = new RunningNetwork(written.network(), courses);
    boolean asWritten = running.network() == written.network();
    NetworkGraph graph = asWritten ? written : new NetworkGraph(running.network());
    this.model = new Model(running, graph, imposed);
    this.search = new InflowSearch(graph, model, falling(courses, near), near);
  }

  /**
   * What falls out of vented lines before that is known: what they carried in a state like it, else
   * what they would carry if they ran full.
   */
  private static Map<LineName, Double> falling(Map<LineName, Course> courses, Model.Near near) {
    Map<LineName, Double> flows = new LinkedHashMap<>();
    courses.forEach(
        (line, course) -> {
          if (course instanceof Course.Vented vented) {
            double before = Math.abs(near.lineFlow().apply(line).orElse(0));
            flows.put(line, before > 0 ? before : vented.fullFlowM3PerS());
          }
        });
    return flows;
  }

  /**
   * The steady state of a network.
   *
   * @throws NoBalance if it has none
   */
  public static SteadyState find(Network network) {
    return find(network, Model.Near.NOTHING);
  }

  /**
   * The same of a network that is like another: the search begins at the flows of that one. The
   * answer is the same, within what a balance is exact to, and mostly there in fewer steps.
   *
   * @param like the steady state of the other
   * @throws NoBalance if it has none
   */
  public static SteadyState find(Network network, SteadyState like) {
    return find(network, like.near());
  }

  private static SteadyState find(Network network, Model.Near near) {
    NetworkGraph graph = new NetworkGraph(network);
    return new Climbing(
            graph,
            Imposed.NOTHING,
            near,
            (courses, close) -> new SteadyStateFinder(graph, Imposed.NOTHING, courses, close).run())
        .settle();
  }

  /**
   * The steady state with flows imposed. Chambers are not starved: a level below an intake tells
   * that the imposed flow is more than can be drawn there.
   *
   * @throws NoBalance if there is none
   */
  public static SteadyState impose(Network network, Imposed imposed) {
    return impose(network, imposed, Model.Near.NOTHING);
  }

  /**
   * The same of a network that is like another, or with other flows: the search begins there.
   *
   * @param like a steady state near it
   * @throws NoBalance if there is none
   */
  public static SteadyState impose(Network network, Imposed imposed, SteadyState like) {
    return impose(network, imposed, like.near());
  }

  private static SteadyState impose(Network network, Imposed imposed, Model.Near near) {
    NetworkGraph graph = new NetworkGraph(network);
    return new Climbing(
            graph,
            imposed,
            near,
            (courses, close) -> new SteadyStateFinder(graph, imposed, courses, close).plain())
        .settle();
  }

  private Climbing.Outcome plain() {
    model.check();
    Solved solved = search.settle(new LinkedHashMap<>());
    return new Found(solved, Map.of());
  }

  /**
   * Refuses a network whose draws no flow in the allowed directions can meet, whatever the heads.
   *
   * @throws NoBalance naming them
   */
  public static void requireDrawsMet(Network network) {
    Model model =
        new Model(
            new RunningNetwork(network, Map.of()), new NetworkGraph(network), Imposed.NOTHING);
    model.check();
    List<UnmetDraw> unmet = model.unmetDraws(Map.of(), Map.of());
    if (!unmet.isEmpty()) {
      throw new NoBalance(new NoBalance.UnmetDraws(unmet));
    }
  }

  private Climbing.Outcome run() {
    model.check();
    Map<PointName, Starved> starved = new LinkedHashMap<>();
    Solved solved = search.settle(starved);
    Map<PointName, Starved> next = reconsider(solved, starved);
    for (int round = 0; !next.keySet().equals(starved.keySet()); round++) {
      if (round > 2 * written.network().points().size()) {
        throw new SearchFailed(search.iterations(), 0, 0);
      }
      Map<PointName, Starved> tried = new LinkedHashMap<>(next);
      try {
        solved = search.settle(tried);
      } catch (NoBalance tooManyStarved) {
        tried = withOneMore(starved, next).orElseThrow(() -> tooManyStarved);
        solved = search.settle(tried);
      }
      starved = tried;
      next = reconsider(solved, starved);
    }
    return new Found(solved, starved);
  }

  /**
   * The chambers that stay starved and one more of those that are new, the one with the highest
   * intake; empty if no more than one is new. A chamber that is starved takes less, so that another
   * before it may not be starved at all.
   */
  private static Optional<Map<PointName, Starved>> withOneMore(
      Map<PointName, Starved> before, Map<PointName, Starved> next) {
    Map<PointName, Starved> added = new LinkedHashMap<>(next);
    added.keySet().removeAll(before.keySet());
    if (added.size() < 2) {
      return Optional.empty();
    }
    PointName highest =
        Collections.max(
                added.entrySet(),
                Comparator.comparingDouble(chamber -> chamber.getValue().intakeM()))
            .getKey();
    added.remove(highest);
    Map<PointName, Starved> fewer = new LinkedHashMap<>(next);
    fewer.keySet().removeAll(added.keySet());
    return Optional.of(fewer);
  }

  /** The chambers that a balance says are starved, with the inflows that it has. */
  private Map<PointName, Starved> reconsider(Solved solved, Map<PointName, Starved> before) {
    Map<PointName, Starved> starved = new LinkedHashMap<>();
    for (Chamber chamber : written.network().points(Chamber.class)) {
      PointName name = chamber.name();
      double level = solved.headM(name).orElse(chamber.intakeM());
      boolean lacks =
          before.containsKey(name)
              ? solved.surplusM3PerS(name) == 0
              : level < chamber.intakeM() - NOTICEABLE_M;
      if (lacks) {
        starved.put(name, new Starved(chamber.intakeM(), search.inflow(name, solved)));
      }
    }
    return starved;
  }

  /** What was found. */
  private final class Found implements Climbing.Outcome {
    private final Solved solved;
    private final Map<PointName, Starved> starved;

    Found(Solved solved, Map<PointName, Starved> starved) {
      this.solved = solved;
      this.starved = starved;
    }

    @Override
    public int iterations() {
      return search.iterations();
    }

    @Override
    public Model.Near near() {
      return solved.near();
    }

    @Override
    public SteadyState with(Map<LineName, Course> courses, int iterations) {
      return describe(solved, starved, courses, iterations);
    }
  }

  private SteadyState describe(
      Solved solved,
      Map<PointName, Starved> starved,
      Map<LineName, Course> courses,
      int iterations) {
    return new SteadyState(
        written.network(),
        new Description(written, running, imposed, solved, starved, courses),
        iterations,
        solved.balance().flowErrorM3PerS(),
        solved.balance().headErrorM());
  }
}
