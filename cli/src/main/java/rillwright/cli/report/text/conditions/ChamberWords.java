package rillwright.cli.report.text.conditions;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PointState;

/** How the water stands in the chambers, in a few words. */
final class ChamberWords {
  private static final String RUNS_DRY = "pump-runs-dry";

  private final Solved solved;

  private ChamberWords(Solved solved) {
    this.solved = solved;
  }

  /** "above the intake", "starved: chamber", "dry: chamber"; a dash where there is no chamber. */
  static String of(Solved solved) {
    return new ChamberWords(solved).words();
  }

  private String words() {
    List<PointState> chambers =
        solved.state().points().stream().filter(it -> it.point() instanceof Chamber).toList();
    List<String> words = new ArrayList<>();
    add("starved", chambers, it -> it.isStarved() && !isDry(it), words);
    add("dry", chambers, this::isDry, words);
    add("level not known", chambers, it -> !it.isDetermined() && !isDry(it), words);
    if (chambers.isEmpty()) {
      return "-";
    }
    return words.isEmpty() ? "above the intake" : String.join("; ", words);
  }

  private static void add(
      String what, List<PointState> chambers, Predicate<PointState> isSo, List<String> words) {
    String names =
        chambers.stream()
            .filter(isSo)
            .map(state -> state.point().name().value())
            .collect(Collectors.joining(", "));
    if (!names.isEmpty()) {
      words.add(what + ": " + names);
    }
  }

  /** Whether something draws from it and no water comes in at all. */
  private boolean isDry(PointState chamber) {
    PointName name = chamber.point().name();
    if (chamber.isStarved()) {
      return solved.state().lines().stream().noneMatch(line -> comesInto(name, line));
    }
    return !chamber.isDetermined()
        && solved.findings().stream()
            .filter(finding -> finding.code().equals(RUNS_DRY))
            .map(finding -> solved.state().network().line(new LineName(finding.at())))
            .map(Line::from)
            .anyMatch(name::equals);
  }

  private static boolean comesInto(PointName name, LineState line) {
    return (line.line().to().equals(name) && line.flowM3PerS() > 0)
        || (line.line().from().equals(name) && line.flowM3PerS() < 0);
  }
}
