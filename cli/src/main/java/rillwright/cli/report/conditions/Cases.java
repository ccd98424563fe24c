package rillwright.cli.report.conditions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.finding.Finding;

/**
 * What a study tells of a project in several conditions.
 *
 * @param title of the job, as written
 * @param units to show it in
 * @param changes made on the command line, as written
 * @param offered whether the conditions are offered, because the file names none
 * @param cases one for each condition, at least one
 */
public record Cases<A>(
    String title, ShownUnits units, List<String> changes, boolean offered, List<Case<A>> cases) {
  public Cases {
    changes = List.copyOf(changes);
    cases = List.copyOf(cases);
  }

  /** The conditions. */
  public List<NamedCondition> conditions() {
    return cases.stream().map(Case::named).toList();
  }

  /**
   * Findings, each once with all the conditions in which it is made: as in the first of them.
   *
   * @param of an answer
   * @return sentences: {@code In "autumn" and "low pond": …}; of what holds as written too, none
   */
  public List<String> findingsOnlyIn(Function<A, List<Finding>> of) {
    Map<String, List<String>> where = new LinkedHashMap<>();
    Map<String, String> messages = new LinkedHashMap<>();
    for (Case<A> one : cases) {
      for (Finding finding : one.answer().map(of).orElse(List.of())) {
        String key = finding.code() + " " + finding.at();
        where.computeIfAbsent(key, any -> new ArrayList<>()).add(one.condition());
        messages.putIfAbsent(key, finding.message(units));
        if (one.named().changes().isEmpty()) {
          messages.put(key, "");
        }
      }
    }
    return messages.entrySet().stream()
        .filter(told -> !told.getValue().isEmpty())
        .map(told -> "In " + names(where.get(told.getKey())) + ": " + told.getValue())
        .toList();
  }

  private static String names(List<String> conditions) {
    return conditions.stream()
        .distinct()
        .map(name -> "\"" + name + "\"")
        .collect(Collectors.joining(" and "));
  }
}
