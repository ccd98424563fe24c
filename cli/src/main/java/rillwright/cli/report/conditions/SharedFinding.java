package rillwright.cli.report.conditions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.report.Solved;
import rillwright.solver.finding.Finding;

/**
 * A finding that holds in one or several conditions.
 *
 * @param outcomes those in which it holds, at least one, in the order of the answer
 * @param worst the one of them in which the falls get least
 * @param finding as it is there: its figures are those of the worst
 */
public record SharedFinding(List<Outcome> outcomes, Outcome worst, Finding finding) {
  public SharedFinding {
    outcomes = List.copyOf(outcomes);
  }

  /** All findings of an answer, each with the conditions in which it holds. */
  public static List<SharedFinding> listOf(ConditionsAnswer answer) {
    Map<String, List<Outcome>> where = new LinkedHashMap<>();
    for (Outcome outcome : answer.outcomes()) {
      for (Finding finding : findings(outcome)) {
        where.computeIfAbsent(key(finding), any -> new ArrayList<>()).add(outcome);
      }
    }
    List<SharedFinding> shared = new ArrayList<>();
    where.forEach(
        (key, outcomes) -> {
          Outcome worst = answer.worstOf(outcomes);
          Finding there =
              findings(worst).stream().filter(it -> key(it).equals(key)).findFirst().orElseThrow();
          shared.add(new SharedFinding(outcomes, worst, there));
        });
    return shared;
  }

  private static List<Finding> findings(Outcome outcome) {
    return outcome.solved().map(Solved::findings).orElse(List.of());
  }

  private static String key(Finding finding) {
    return finding.code() + " " + finding.at();
  }

  /** Whether a finding of another condition is this one. */
  public boolean isThatOf(Finding other) {
    return key(other).equals(key(finding));
  }

  /** Whether it holds in a condition without changes. */
  public boolean holdsAsWritten() {
    return outcomes.stream().anyMatch(outcome -> outcome.named().changes().isEmpty());
  }

  /** The names of the conditions: {@code "low" and "lower"}. */
  public String conditions() {
    List<String> names =
        outcomes.stream().map(outcome -> "\"" + outcome.condition() + "\"").distinct().toList();
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}
