package rillwright.cli.report.conditions;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.curves.wording.Listing;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Wording;

/**
 * A finding that is made in one or several conditions.
 *
 * @param made where it is made, at least once, in the order of the conditions
 */
public record SharedFinding<A>(List<Made<A>> made) {
  public SharedFinding {
    made = List.copyOf(made);
  }

  /**
   * A finding where it is made.
   *
   * @param where the condition
   * @param finding as it is there, with the figures of that condition
   */
  public record Made<A>(Case<A> where, Finding finding) {}

  /**
   * All findings of some cases, each once with the conditions in which it is made.
   *
   * @param of the findings of an answer
   */
  public static <A> List<SharedFinding<A>> listOf(Cases<A> answer, Function<A, List<Finding>> of) {
    Map<String, List<Made<A>>> made = new LinkedHashMap<>();
    for (Case<A> one : answer.cases()) {
      for (Finding finding : one.answer().map(of).orElse(List.of())) {
        made.computeIfAbsent(finding.code() + " " + finding.at(), any -> new ArrayList<>())
            .add(new Made<>(one, finding));
      }
    }
    return made.values().stream().map(SharedFinding::new).toList();
  }

  /** What is found, by its code. */
  public String code() {
    return made.get(0).finding().code();
  }

  /** Whether it is made in a condition without changes. */
  public boolean holdsAsWritten() {
    return made.stream().anyMatch(one -> one.where().named().changes().isEmpty());
  }

  /** It as it is in the condition that stands first in an order; the first of several alike. */
  public Made<A> first(Comparator<Case<A>> order) {
    return made.stream().min(Comparator.comparing(Made::where, order)).orElseThrow();
  }

  /**
   * It in a sentence: {@code In "low" and "lower": …}; where the figures differ {@code In "lower":
   * … Also in "low" (its first figure that differs).}
   *
   * @param shown where it is shown with its figures
   */
  public String sentence(Made<A> shown, Wording wording) {
    String message = shown.finding().message(wording);
    boolean alike = made.stream().allMatch(one -> one.finding().message(wording).equals(message));
    List<String> names = made.stream().map(SharedFinding::name).distinct().toList();
    List<String> others =
        made.stream()
            .filter(one -> !name(one).equals(name(shown)))
            .map(one -> name(one) + figure(one, shown, wording))
            .distinct()
            .toList();
    return alike || others.isEmpty()
        ? "In " + Listing.of(names) + ": " + message
        : "In " + name(shown) + ": " + message + " Also in " + Listing.of(others) + ".";
  }

  private static String figure(Made<?> one, Made<?> shown, Wording wording) {
    return one.finding()
        .firstUnlike(shown.finding(), wording)
        .map(words -> " (" + words + ")")
        .orElse("");
  }

  private static String name(Made<?> one) {
    return "\"" + one.where().condition() + "\"";
  }
}
