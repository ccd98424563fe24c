package rillwright.cli.study.compare;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.file.Project;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.cli.study.solve.Solved;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.finding.Finding;

/**
 * Two projects side by side.
 *
 * @param job the first project's, whose units are shown
 * @param a the first project
 * @param b the second project
 * @param entered what differs in their files
 * @param sheets names of pumps whose data sheets differ, though both files name them
 * @param measured every figure of either
 * @param targets what points with a target get
 */
public record Compared(
    Job job,
    Solved a,
    Solved b,
    List<Entered> entered,
    List<String> sheets,
    List<Measured> measured,
    List<OnTarget> targets)
    implements Answer {
  public Compared {
    entered = List.copyOf(entered);
    sheets = List.copyOf(sheets);
    measured = List.copyOf(measured);
    targets = List.copyOf(targets);
  }

  /** Two projects and what flows in them. */
  public static Compared of(Project a, Solved solvedA, Project b, Solved solvedB) {
    return new Compared(
        Job.of(a),
        solvedA,
        solvedB,
        Entered.listBetween(a, b),
        a.sheets().entrySet().stream()
            .filter(it -> b.sheets().containsKey(it.getKey()))
            .filter(it -> !likeIn(b, it))
            .map(Map.Entry::getKey)
            .toList(),
        Measuring.listBetween(solvedA, solvedB),
        OnTarget.listBetween(solvedA, solvedB));
  }

  private static boolean likeIn(Project b, Map.Entry<String, DataSheet> a) {
    DataSheet other = b.sheets().get(a.getKey());
    return a.getValue().curve().points().equals(other.curve().points())
        && a.getValue().facts().equals(other.facts());
  }

  /** Whether neither their files nor their figures differ. */
  public boolean alike() {
    return entered.isEmpty() && sheets.isEmpty() && measured.stream().noneMatch(Measured::differs);
  }

  /** Findings of the first project that the second has not. */
  public List<Finding> onlyInA() {
    return only(a, b);
  }

  /** Findings of the second project that the first has not. */
  public List<Finding> onlyInB() {
    return only(b, a);
  }

  private static List<Finding> only(Solved one, Solved other) {
    Set<List<String>> there =
        other.findings().stream()
            .map(it -> List.of(it.code(), it.at()))
            .collect(Collectors.toSet());
    return one.findings().stream()
        .filter(it -> !there.contains(List.of(it.code(), it.at())))
        .toList();
  }
}
