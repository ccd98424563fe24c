package rillwright.cli.study.mend.change;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Changes that are tried together.
 *
 * @param steps one or more
 */
public record Candidate(List<Step> steps) {
  public Candidate {
    steps = List.copyOf(steps);
  }

  public static Candidate of(Step step) {
    return new Candidate(List.of(step));
  }

  /** These and other changes. */
  public Candidate and(Candidate other) {
    return new Candidate(Stream.concat(steps.stream(), other.steps.stream()).toList());
  }

  /** Whether others do the same to the same things, and more. */
  public boolean isPartOf(Candidate other) {
    return steps.size() < other.steps.size()
        && steps.stream().allMatch(step -> other.steps.stream().anyMatch(step::isLike));
  }

  /** As any command takes them. */
  public List<String> set() {
    return steps.stream().flatMap(step -> step.set().stream()).toList();
  }

  /** The greatest effort among them. */
  public Work work() {
    return steps.stream()
        .map(step -> step.action().work())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** Whether nothing but valves is set. */
  public boolean isOfValvesAlone() {
    return steps.stream().allMatch(step -> step.action().work() == Work.VALVE);
  }

  /** Whether a crest is moved or made narrower or wider. */
  public boolean altersLook() {
    return steps.stream().anyMatch(step -> step.action().work() == Work.CREST);
  }

  /** The efforts of all, added up; a number to compare by. */
  public int effort() {
    return steps.stream().mapToInt(step -> step.action().work().effort()).sum();
  }

  /** The class of changes; "several" of different ones. */
  public String kind() {
    List<String> kinds = steps.stream().map(step -> step.action().kind()).distinct().toList();
    List<String> own = kinds.stream().filter(kind -> !kind.equals("valve")).toList();
    List<String> shown = kinds.contains("new valve") ? own : kinds;
    return shown.size() == 1 ? shown.get(0) : "several";
  }

  /** The prices that are known, together. */
  public double knownPrice() {
    return steps.stream().mapToDouble(step -> step.price().orElse(0)).sum();
  }

  /** The price of all that is bought; empty if that of something is not known. */
  public OptionalDouble price() {
    double sum = 0;
    for (Step step : steps) {
      if (step.price().isEmpty()) {
        return step.price();
      }
      sum += step.price().getAsDouble();
    }
    return OptionalDouble.of(sum);
  }
}
