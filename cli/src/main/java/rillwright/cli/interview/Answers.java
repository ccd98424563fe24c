package rillwright.cli.interview;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What was answered, by the questions' keys.
 *
 * @param given in the order of the answers; a question without one has what it suggests
 */
public record Answers(Map<String, String> given) {
  /** Nothing answered. */
  public static final Answers NONE = new Answers(Map.of());

  public Answers {
    given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }

  /** The answer to a question, or what it suggests. */
  public String to(String key) {
    String answer = given.get(key);
    return answer == null ? Questions.named(key).suggestion().apply(this) : answer;
  }

  /** Whether a question is answered. */
  public boolean has(String key) {
    return given.containsKey(key);
  }

  /** These and one more, or another one. */
  public Answers with(String key, String answer) {
    Map<String, String> more = new LinkedHashMap<>(given);
    more.put(key, answer);
    return new Answers(more);
  }

  /** These without one. */
  public Answers without(String key) {
    Map<String, String> fewer = new LinkedHashMap<>(given);
    fewer.remove(key);
    return new Answers(fewer);
  }

  boolean isMetric() {
    return to(Questions.UNITS).equals("metric");
  }

  boolean isJob(String... jobs) {
    return Set.of(jobs).contains(to(Questions.JOB));
  }

  /** Whether the pump stands in a chamber behind a skimmer. */
  boolean hasSkimmer() {
    return !isJob(Questions.RESERVOIR) && !to(Questions.SKIMMER).equals(Questions.NONE);
  }
}
