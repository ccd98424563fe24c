package rillwright.solver.study.diagnosis.cause;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What was seen on site or reported by the customer. */
public enum Sign {
  SUDDEN("sudden"),
  FOR_WEEKS("for weeks"),
  SINCE_BUILT("since it was built"),
  BUBBLES("bubbles"),
  NO_BUBBLES("no bubbles"),
  SURGING("surging"),
  BETTER_AFTER_RESTART("better after restart"),
  POND_DROPPING("pond dropping"),
  POND_STEADY("pond steady"),
  WEAK_AT_THE_TOP("weak at the top"),
  WEAK_ONLY_DOWNSTREAM("weak only downstream"),
  AFTER_ELECTRICAL_WORK("after electrical work"),
  AFTER_DIGGING("after digging"),
  AFTER_CLEANING("after cleaning"),
  AFTER_WINTER("after winter"),
  LOUD_PUMP("loud pump"),
  MILKY_WATER("milky water"),
  BREAKER_TRIPS("breaker trips"),
  RUNS_HOT("pump runs hot"),
  AFTER_RAIN("after rain");

  private final String words;

  Sign(String words) {
    this.words = words;
  }

  /** As project files name it. */
  public String words() {
    return words;
  }

  /** The sign of a name. */
  public static Optional<Sign> find(String words) {
    return Arrays.stream(values()).filter(sign -> sign.words.equals(words)).findFirst();
  }

  /** All names. */
  public static List<String> names() {
    return Arrays.stream(values()).map(Sign::words).toList();
  }

  /** The signs that cannot be seen together with this one. */
  public List<Sign> excludes() {
    return EXCLUSIVE.stream()
        .filter(group -> group.contains(this))
        .flatMap(List::stream)
        .filter(other -> other != this)
        .toList();
  }

  private static final List<List<Sign>> EXCLUSIVE =
      List.of(
          List.of(SUDDEN, FOR_WEEKS, SINCE_BUILT),
          List.of(BUBBLES, NO_BUBBLES),
          List.of(POND_DROPPING, POND_STEADY),
          List.of(WEAK_AT_THE_TOP, WEAK_ONLY_DOWNSTREAM));
}
