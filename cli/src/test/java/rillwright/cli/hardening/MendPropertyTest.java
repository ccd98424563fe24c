package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.MendRequest;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.balance.SearchFailed;
import rillwright.solver.network.Line;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * What {@code mend} promises on drawn projects with missed targets: each is what the file with the
 * same changes gives, what is called mending mends, no single change mends for less, and no change
 * of a class exceeds its bound. {@code -Drillwright.mends=200} tries more projects.
 */
class MendPropertyTest {
  private static final int PROJECTS = Integer.getInteger("rillwright.mends", 8);
  private static final long SEED = Long.getLong("rillwright.seed", 1);
  private static final double MOST_SHARE = 1.25;

  @TempDir private Path folder;

  /** A single change, tried without {@code mend}. */
  private record Single(String kind, List<String> set, boolean isFree) {}

  @Test
  void keepsWhatItPromises() {
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    int mended = 0;
    int ofRings = 0;
    for (long seed = SEED; tried < PROJECTS; seed++) {
      Path file = drawn(seed);
      Optional<SteadyState> before = state(ProjectReader.read(file, List.of()));
      if (before.filter(SteadyState::missesATarget).isEmpty()) {
        continue;
      }
      tried++;
      MendAnswer answer = mend(file);
      ofRings +=
          answer.bounds().stream().anyMatch(it -> it.kind() == Bound.Kind.ALL_LOSSES) ? 1 : 0;
      mended += answer.mending().isEmpty() ? 0 : 1;
      for (String fault : faults(answer, before.get(), file)) {
        wrong.add("seed " + seed + ": " + fault);
      }
    }
    assertEquals(List.of(), wrong, () -> String.join("\n", wrong));
    assertTrue(ofRings > 0, "no bound of a ring or of several pumps was tried");
    assertTrue(mended > PROJECTS / 6, mended + " of " + PROJECTS + " could be mended");
  }

  /** Here one of several missed falls is mended by a valve, and not all of them. */
  @ParameterizedTest
  @ValueSource(longs = {95, 5018})
  void namesAValveThatMendsOneOfSeveralFalls(long seed) {
    Path file = drawn(seed);
    SteadyState before = state(ProjectReader.read(file, List.of())).orElseThrow();
    MendAnswer answer = mend(file);
    assertEquals(List.of(), faults(answer, before, file));
    assertFalse(answer.mending().isEmpty());
  }

  private Path drawn(long seed) {
    return Path.of(Scratch.file(folder, ProjectTree.yaml(RandomProject.of(seed))));
  }

  private static MendAnswer mend(Path file) {
    return new MendRequest(Offered.NOTHING, List.of(), 10)
        .answer(ProjectReader.read(file, List.of()));
  }

  private static List<String> faults(MendAnswer answer, SteadyState before, Path file) {
    List<String> faults = new ArrayList<>();
    for (Remedy remedy : answer.remedies()) {
      SteadyState after = state(ProjectReader.read(file, remedy.candidate().set())).orElseThrow();
      remedy
          .fallsM3PerS()
          .forEach(
              (fall, flow) -> {
                double solved = after.point(fall).outflowM3PerS();
                if (Math.abs(solved - flow) > 1e-9 * Math.max(1e-3, Math.abs(solved))) {
                  faults.add(remedy.candidate().set() + " promises " + flow + ", gives " + solved);
                }
              });
      if (remedy.mends() && !isMended(remedy.serves(), answer.needs(), before, after)) {
        faults.add(remedy.candidate().set() + " does not mend " + remedy.serves());
      }
      if (remedy.mendsAllOf(answer.needs()) != remedy.leaves().isEmpty()) {
        faults.add(remedy.candidate().set() + " leaves " + remedy.leaves());
      }
      faults.addAll(beyond(answer.bounds(), remedy.candidate().kind(), after, remedy.toString()));
    }
    faults.addAll(byBruteForce(answer, before, file));
    return faults;
  }

  /** Written again: every target served is met, and none is lost. */
  private static boolean isMended(
      List<PointName> serves, List<Need> needs, SteadyState before, SteadyState after) {
    for (PointName point : serves) {
      boolean ofTarget =
          needs.stream().anyMatch(need -> need.point().equals(point) && need.isOfTarget());
      if (ofTarget && !isMet(share(point, after))) {
        return false;
      }
    }
    for (Point point : before.network().waysOut()) {
      boolean wasMet = isMet(share(point.name(), before));
      if (wasMet && !isMet(share(point.name(), after))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isMet(double share) {
    return share >= 1 && share <= MOST_SHARE;
  }

  private static double share(PointName point, SteadyState state) {
    double target = state.network().point(point).targetM3PerS().orElse(Double.NaN);
    return state.point(point).outflowM3PerS() / target;
  }

  /** Every bound of a class holds for a change of that class. */
  private static List<String> beyond(
      List<Bound> bounds, String kind, SteadyState after, String what) {
    Map<String, Bound.Kind> classes =
        Map.of(
            "valve", Bound.Kind.VALVES,
            "new valve", Bound.Kind.VALVES,
            "cleaning", Bound.Kind.CLEANING,
            "fitting", Bound.Kind.FITTINGS,
            "pump speed", Bound.Kind.PUMP_SPEED,
            "second line", Bound.Kind.PIPE_FRICTION,
            "pipe", Bound.Kind.PIPE_FRICTION);
    List<String> faults = new ArrayList<>();
    for (Bound bound : bounds) {
      boolean isOfAll = bound.kind() == Bound.Kind.ALL_LOSSES && classes.containsKey(kind);
      if (isOfAll || bound.kind() == classes.get(kind)) {
        bound
            .fallsM3PerS()
            .forEach(
                (fall, most) -> {
                  double flow = after.point(fall).outflowM3PerS();
                  if (flow > most * (1 + 1e-9) + 1e-12) {
                    faults.add(what + ": " + fall + " gets " + flow + " beyond " + most);
                  }
                });
      }
    }
    return faults;
  }

  private static List<String> byBruteForce(MendAnswer answer, SteadyState before, Path file) {
    List<String> faults = new ArrayList<>();
    Project project = ProjectReader.read(file, List.of());
    List<PointName> missed =
        before.points().stream()
            .filter(point -> point.isUnderTarget())
            .map(point -> point.point().name())
            .toList();
    for (Single single : singles(project)) {
      Optional<SteadyState> after = changed(project, single.set());
      if (after.isEmpty()) {
        continue;
      }
      faults.addAll(beyond(answer.bounds(), single.kind(), after.get(), single.toString()));
      List<PointName> met =
          missed.stream().filter(fall -> isMet(share(fall, after.get()))).toList();
      boolean newlyStarved = after.get().starves() && !before.starves();
      if (!met.isEmpty()
          && !newlyStarved
          && isMended(met, answer.needs(), before, after.get())
          && !hasNoDearer(answer, single.isFree(), met)) {
        faults.add(single + " mends " + met + ", and mend names none no dearer");
      }
    }
    return faults;
  }

  /** Whether mend names one for one of these that costs nothing, or any where that one costs. */
  private static boolean hasNoDearer(MendAnswer answer, boolean free, List<PointName> met) {
    return answer.mending().stream()
        .filter(remedy -> remedy.serves().stream().anyMatch(met::contains))
        .map(remedy -> remedy.candidate().price())
        .anyMatch(price -> !free || price.equals(OptionalDouble.of(0)));
  }

  /**
   * Every valve at every fifth degree or K, every pipe up to three sizes up, clean, speed, count.
   */
  private static List<Single> singles(Project project) {
    List<Single> singles = new ArrayList<>();
    for (Line line : project.network().lines()) {
      String at = "lines." + line.name().value() + ".";
      Map<String, Integer> counts = new LinkedHashMap<>();
      line.parts()
          .forEach(
              part -> {
                int count = counts.merge(part.kind(), 1, Integer::sum);
                String step = at + part.kind() + (count > 1 ? " " + count : "");
                if (part instanceof Valve valve && valve.loss().opening().isPresent()) {
                  for (int open = 5; open <= 100; open += 5) {
                    singles.add(new Single("valve", List.of(step + ".open=" + open + " %"), true));
                  }
                }
                if (part instanceof Pump) {
                  for (int speed = 45; speed <= 100; speed += 5) {
                    singles.add(
                        new Single("pump speed", List.of(step + ".speed=" + speed + " %"), false));
                  }
                  for (String arranged : List.of("parallel", "series")) {
                    singles.add(
                        new Single(
                            "more pumps",
                            List.of(step + ".count=2", step + ".arranged=" + arranged),
                            false));
                  }
                }
                if (part.kind().equals("skimmer") || part.kind().equals("filter")) {
                  singles.add(new Single("cleaning", List.of(step + ".clogged=0 %"), true));
                }
              });
      larger(line)
          .forEach(
              size -> singles.add(new Single("pipe", List.of(at + "pipe.size=" + size), false)));
    }
    return singles;
  }

  private static List<String> larger(Line line) {
    Catalogue catalogue = Catalogue.standard();
    return line.placed(Run.class).stream()
        .map(run -> catalogue.findPipeOfLabel(run.part().label()))
        .flatMap(Optional::stream)
        .findFirst()
        .map(
            now ->
                catalogue.sizesOf(now.material()).stream()
                    .map(size -> catalogue.findPipe(now.material(), size).orElseThrow())
                    .filter(pipe -> pipe.isMetric() == now.isMetric())
                    .filter(pipe -> pipe.insideM() > now.insideM())
                    .limit(3)
                    .map(pipe -> pipe.size())
                    .toList())
        .orElse(List.of());
  }

  private static Optional<SteadyState> changed(Project project, List<String> set) {
    try {
      return state(project.with(set));
    } catch (InvalidInput cannotBeSo) {
      return Optional.empty();
    }
  }

  private static Optional<SteadyState> state(Project project) {
    try {
      return Optional.of(SteadyStateFinder.find(project.network()));
    } catch (NoBalance | SearchFailed unbalanced) {
      return Optional.empty();
    }
  }
}
