package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;
import rillwright.solver.pumping.PumpSuction;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;

/**
 * Level at which a basin no longer feeds its pump.
 *
 * @param levelM level of the basin, m
 * @param drawsAir whether a pump draws air there; else its skimmer passes just what runs
 * @param coverM depth that this pump asks for over its inlet, m; 0 where none is known, and for a
 *     skimmer
 * @param lowerM by how much the water at this pump stands below the basin's at the flow that runs,
 *     m
 */
public record StarveLevel(double levelM, boolean drawsAir, double coverM, double lowerM) {

  /** That of a basin while a state runs, the highest of several; empty if nothing tells it. */
  static Optional<StarveLevel> of(SteadyState state, Basin basin) {
    List<StarveLevel> levels = new ArrayList<>();
    for (Placed<Skimmer> skimmer : state.network().placed(Skimmer.class)) {
      if (skimmer.line().from().equals(basin.name()) && skimmer.index() == 0) {
        double flow = state.line(skimmer.line().name()).flowM3PerS();
        levels.add(new StarveLevel(skimmer.part().levelToPassM(flow), false, 0, 0));
      }
    }
    withoutSkimmer(state, basin).forEach(levels::add);
    return levels.stream().reduce((one, other) -> one.levelM() < other.levelM() ? other : one);
  }

  /** Those at which a pump draws air that draws there, or in a chamber, without a skimmer. */
  private static Stream<StarveLevel> withoutSkimmer(SteadyState state, Basin basin) {
    Set<Chamber> chambers = new LinkedHashSet<>();
    addChambers(state, basin.name(), chambers);
    double level = state.point(basin.name()).headM().orElse(basin.levelM());
    return Stream.concat(
        basin.leastLevelM().stream().mapToObj(least -> drawingAir(state, basin.name(), least, 0)),
        chambers.stream()
            .map(
                chamber ->
                    drawingAir(
                        state,
                        chamber.name(),
                        basin.leastLevelM().orElse(chamber.intakeM()),
                        level - state.point(chamber.name()).headM().orElse(level))));
  }

  /**
   * That of a basin by what draws at it or in one of its chambers.
   *
   * @param leastM level of the water there below which air is drawn, the depth not counted, m
   * @param lowerM by how much the water there stands below the basin's, m
   */
  private static StarveLevel drawingAir(
      SteadyState state, PointName place, double leastM, double lowerM) {
    double cover =
        state.lines().stream()
            .filter(line -> line.flowM3PerS() > 0 && line.line().from().equals(place))
            .filter(line -> !line.line().has(Skimmer.class))
            .flatMapToDouble(line -> firstDepthNeededM(state, line).stream())
            .max()
            .orElse(0);
    double lower = Math.max(0, lowerM);
    return new StarveLevel(leastM + cover + lower, true, cover, lower);
  }

  /**
   * Adds the chambers that lines without skimmer and pump lead to, and only such, in their turn.
   */
  private static void addChambers(SteadyState state, PointName from, Set<Chamber> chambers) {
    for (Chamber chamber : state.network().points(Chamber.class)) {
      List<Line> feeders =
          state.network().lines().stream()
              .filter(line -> line.from().equals(from) && line.to().equals(chamber.name()))
              .toList();
      boolean open =
          feeders.stream().noneMatch(line -> line.has(Skimmer.class) || line.has(Pump.class));
      if (!feeders.isEmpty() && open && chambers.add(chamber)) {
        addChambers(state, chamber.name(), chambers);
      }
    }
  }

  /** Depth that the first pump of a line asks for over its inlet, m. */
  private static OptionalDouble firstDepthNeededM(SteadyState state, LineState line) {
    return IntStream.range(0, line.parts().size())
        .filter(i -> line.parts().get(i).part() instanceof Pump)
        .limit(1)
        .mapToObj(i -> PumpSuction.of(state, line, i).orElseThrow().depthNeededM())
        .findFirst()
        .orElse(OptionalDouble.empty());
  }
}
