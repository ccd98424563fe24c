package rillwright.cli.study.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.change.Work;
import rillwright.cli.study.mend.kind.LargerPipes;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.cli.study.mend.search.CheapestSet;
import rillwright.cli.study.mend.search.Searched;
import rillwright.cli.study.mend.site.Site;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.cli.study.mend.trial.Trials;
import rillwright.solver.network.Line;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Run;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import rillwright.solver.study.valvesetting.ValvePlace;
import rillwright.solver.study.valvesetting.ValveSettingFinder;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/** The least set of changes, against every set tried without the search. */
class CheapestSetTest {
  private static final double YEARS = 10;
  private static final List<String> SIZES = List.of("1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in");

  /** Invented, USD for a foot. */
  private static final Map<String, Double> PRICES =
      Map.of("1-1/2 in", 1.9, "2 in", 2.6, "2-1/2 in", 3.9, "3 in", 5.4, "4 in", 8.2);

  private static final double TRENCH = 6;
  private static final double FOOT_M = 0.3048;

  private static Project twinFalls(String pump, int low, int high) {
    List<String> set = new ArrayList<>();
    PRICES.forEach(
        (size, price) -> set.add("prices.pipe.PVC schedule 40 " + size + "=" + price + " USD/ft"));
    set.add("prices.trench=" + TRENCH + " USD/ft");
    set.add("lines.supply.pump.model=" + pump);
    set.add("points.low fall.target=" + low + " gph");
    set.add("points.high fall.target=" + high + " gph");
    return ProjectReader.read(Path.of("../examples/twin-falls/ball-valves.yaml"), set);
  }

  private static Searched search(Project project) {
    Site site = Site.of(project);
    return new CheapestSet(
            site, new Trials(site), new Pumps(Offered.NOTHING), new LargerPipes(SIZES))
        .find(YEARS)
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "P-400, 2160, 2000",
    "P-400, 2400, 1700",
    "P-180, 1500, 700",
    "P-600, 3000, 1900",
    "P-600, 2900, 2400"
  })
  void isWhatTryingEverySetFinds(String pump, int low, int high) {
    Project project = twinFalls(pump, low, high);
    Searched searched = search(project);
    assertTrue(searched.proven());
    OptionalDouble least = byBruteForce(project);
    assertEquals(least.isPresent(), searched.byCost(), searched.toString());
    if (least.isPresent()) {
      Remedy found = searched.least().get();
      double cost = found.costOver(YEARS).orElseThrow();
      assertEquals(least.getAsDouble(), cost, 0.005 * cost, found.candidate().toString());
      SteadyState solved = SteadyStateFinder.find(project.with(found.candidate().set()).network());
      assertTrue(gph(solved, "low fall") >= low && gph(solved, "high fall") >= high);
    }
    assertTrue(searched.tried() < searched.sets(), searched.toString());
  }

  private static double gph(SteadyState state, String fall) {
    return state.point(new PointName(fall)).outflowM3PerS() * 3600 / 3.785411784e-3;
  }

  /** Every set of sizes with the pump that is there: no other has a price. */
  private static OptionalDouble byBruteForce(Project project) {
    OptionalDouble least = OptionalDouble.empty();
    for (Map<String, String> sizes : sets(List.of("supply", "low", "high"))) {
      List<String> set = new ArrayList<>();
      double price = 0;
      for (Map.Entry<String, String> sized : sizes.entrySet()) {
        Line line =
            project.network().lines().stream()
                .filter(it -> it.name().value().equals(sized.getKey()))
                .findFirst()
                .orElseThrow();
        set.add("lines." + sized.getKey() + ".pipe.size=" + sized.getValue());
        boolean isNew =
            !line.placed(Run.class).get(0).part().label().startsWith(sized.getValue() + " ");
        double feet =
            line.placed(Run.class).stream().mapToDouble(run -> run.part().lengthM()).sum() / FOOT_M;
        price += isNew ? feet * (PRICES.get(sized.getValue()) + TRENCH) : 0;
      }
      Optional<Double> year = year(project.with(set));
      double cost = price + YEARS * year.orElse(Double.POSITIVE_INFINITY);
      if (year.isPresent() && cost < least.orElse(Double.POSITIVE_INFINITY)) {
        least = OptionalDouble.of(cost);
      }
    }
    return least;
  }

  private static List<Map<String, String>> sets(List<String> lines) {
    List<Map<String, String>> all = List.of(Map.of());
    for (String line : lines) {
      List<Map<String, String>> longer = new ArrayList<>();
      for (Map<String, String> begun : all) {
        for (String size : SIZES) {
          Map<String, String> more = new HashMap<>(begun);
          more.put(line, size);
          longer.add(more);
        }
      }
      all = longer;
    }
    return all;
  }

  /** Electricity of a year with the valves wide open or, where that is not enough, best set. */
  private static Optional<Double> year(Project project) {
    List<ValvePlace> valves =
        project.network().placed(Valve.class).stream()
            .map(valve -> new ValvePlace(valve.line().name(), valve.index()))
            .toList();
    SteadyState state =
        ValveSettingFinder.find(project.network(), valves, Aim.LARGEST_SHARE).state();
    Site site = Site.of(project);
    return site.targets().shareAt(site.targets().worstIn(state), state) >= 1
        ? Optional.of(RunningFigures.of(state, project.running()).costPerYear().orElseThrow())
        : Optional.empty();
  }

  @Test
  void withoutPricesTheLeastNewPipeIsLaid() {
    Project project =
        ProjectReader.read(
            Path.of("../examples/twin-falls/ball-valves.yaml"),
            List.of("points.high fall.target=1900 gph"));
    Searched searched = search(project);
    assertTrue(searched.proven());
    assertEquals(false, searched.byCost());
    assertTrue(searched.least().isPresent(), searched.toString());
  }

  /** P-600 would do with a smaller size in one line, at half as much again in electricity. */
  @Test
  void aPumpIsKeptForAFewMetresOfPipe() {
    Project project =
        ProjectReader.read(Path.of("../examples/twin-falls/ball-valves.yaml"), List.of());
    Searched searched =
        new MendRequest(
                Offered.NOTHING,
                List.of(),
                YEARS,
                OptionalDouble.empty(),
                Optional.of(List.of("as written", "five years fouled")))
            .answer(project)
            .searched()
            .orElseThrow();
    assertTrue(searched.proven());
    assertEquals(
        Set.of(Work.PIPE, Work.VALVE),
        searched.least().orElseThrow().candidate().steps().stream()
            .map(step -> step.action().work())
            .collect(Collectors.toSet()));
  }
}
