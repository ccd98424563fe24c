package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
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
 */
public record StarveLevel(double levelM, boolean drawsAir, double coverM) {

  /** That of a basin while a state runs, the highest of several; empty if nothing tells it. */
  static Optional<StarveLevel> of(SteadyState state, Basin basin) {
    List<StarveLevel> levels = new ArrayList<>();
    for (Placed<Skimmer> skimmer : state.network().placed(Skimmer.class)) {
      if (skimmer.line().from().equals(basin.name()) && skimmer.index() == 0) {
        double flow = state.line(skimmer.line().name()).flowM3PerS();
        levels.add(new StarveLevel(skimmer.part().levelToPassM(flow), false, 0));
      }
    }
    withoutSkimmer(state, basin).ifPresent(levels::add);
    return levels.stream().reduce((one, other) -> one.levelM() < other.levelM() ? other : one);
  }

  /**
   * Its least level, m, and over it the greatest depth that a pump asks for which draws there
   * without a skimmer. The least level: as the file says, else the highest intake of such chambers.
   */
  private static Optional<StarveLevel> withoutSkimmer(SteadyState state, Basin basin) {
    List<Chamber> chambers = chambersIn(state, basin.name());
    OptionalDouble least =
        basin.leastLevelM().isPresent()
            ? basin.leastLevelM()
            : chambers.stream().mapToDouble(Chamber::intakeM).max();
    if (least.isEmpty()) {
      return Optional.empty();
    }
    List<PointName> places = new ArrayList<>(List.of(basin.name()));
    chambers.forEach(chamber -> places.add(chamber.name()));
    double submergence =
        state.lines().stream()
            .filter(line -> line.flowM3PerS() > 0 && places.contains(line.line().from()))
            .filter(line -> !line.line().has(Skimmer.class))
            .flatMapToDouble(line -> firstDepthNeededM(state, line).stream())
            .max()
            .orElse(0);
    return Optional.of(new StarveLevel(least.getAsDouble() + submergence, true, submergence));
  }

  /** The chambers that lines without skimmer and pump lead to from a basin, and only such. */
  private static List<Chamber> chambersIn(SteadyState state, PointName basin) {
    List<Chamber> chambers = new ArrayList<>();
    for (Chamber chamber : state.network().points(Chamber.class)) {
      List<Line> feeders =
          state.network().lines().stream()
              .filter(line -> line.from().equals(basin) && line.to().equals(chamber.name()))
              .toList();
      boolean open =
          feeders.stream().noneMatch(line -> line.has(Skimmer.class) || line.has(Pump.class));
      if (!feeders.isEmpty() && open) {
        chambers.add(chamber);
      }
    }
    return chambers;
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
