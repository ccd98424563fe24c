package rillwright.solver.steady;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.solver.network.LineName;

/**
 * Steady states by the courses of the lines that do not run full. Those of late are kept: how high
 * water came in a line that is shut, and whether it sweeps the air along in one that is full,
 * change nothing in the balance.
 */
final class KnownStates implements Function<Map<LineName, Course>, SteadyState> {
  /** A few are asked for again; all of a large network would fill the memory. */
  private static final int MOST_KEPT = 50;

  /** A balance, told with courses that come to the same as those it was found with. */
  interface Told extends Function<Map<LineName, Course>, SteadyState> {}

  private final Function<Map<LineName, Course>, Told> finder;
  private final Map<Map<LineName, Course>, Told> known = new LinkedHashMap<>();

  /**
   * None is known yet.
   *
   * @param finder the balance with some courses
   */
  KnownStates(Function<Map<LineName, Course>, Told> finder) {
    this.finder = finder;
  }

  /**
   * The steady state with some courses.
   *
   * @throws NoBalance if there is none
   */
  @Override
  public SteadyState apply(Map<LineName, Course> courses) {
    Map<LineName, Course> plain = plainly(courses);
    Told told = known.get(plain);
    if (told == null) {
      told = finder.apply(plain);
      if (known.size() == MOST_KEPT) {
        known.remove(known.keySet().iterator().next());
      }
      known.put(plain, told);
    }
    return told.apply(Map.copyOf(courses));
  }

  /** What of them changes the balance. */
  private static Map<LineName, Course> plainly(Map<LineName, Course> courses) {
    Map<LineName, Course> plain = new LinkedHashMap<>();
    courses.forEach(
        (line, course) -> {
          if (course instanceof Course.NotStarted) {
            plain.put(line, new Course.NotStarted(0, OptionalDouble.empty()));
          } else if (course instanceof Course.Vented) {
            plain.put(line, course);
          }
        });
    return plain;
  }
}
