package rillwright.cli.page.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;

/** What was computed last, so that looking again and comparing with the file computes nothing. */
public final class Outcomes {
  private static final int MOST = 6;

  private final Map<Asked, Outcome> known = new LinkedHashMap<>();

  /** A project, this very one, in some units. */
  private record Asked(Project project, Show units) {
    @Override
    @SuppressWarnings("ReferenceEquality") // to compare all of a project takes longer than it saves
    public boolean equals(Object other) {
      return other instanceof Asked asked && asked.project == project && asked.units == units;
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(project) + units.hashCode();
    }
  }

  /** What is computed of a project, shown in some units. */
  public Outcome of(Project project, Show units) {
    Asked asked = new Asked(project, units);
    synchronized (known) {
      Outcome there = known.get(asked);
      if (there != null) {
        return there;
      }
    }
    Outcome outcome = Outcome.of(Outcome.shownIn(project, units));
    synchronized (known) {
      known.put(asked, outcome);
      if (known.size() > MOST) {
        known.remove(known.keySet().iterator().next());
      }
    }
    return outcome;
  }
}
