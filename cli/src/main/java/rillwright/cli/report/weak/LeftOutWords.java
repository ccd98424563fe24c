package rillwright.cli.report.weak;

import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Sight;

/** Why something that was read says nothing of a job in which nothing is wrong. */
public final class LeftOutWords {
  private LeftOutWords() {}

  /** The reason, to stand behind a colon. */
  public static String why(Measurand what) {
    if (what instanceof Meter meter) {
      return meter.kind() == Meter.Kind.VOLTS
          ? "it tells of a weak supply, which is a fault"
          : "more than evaporates is a leak, which is a fault";
    }
    return what instanceof Sight sight
        ? switch (sight.look()) {
          case NET, FILTER, PART -> "the file does not say what share of it is clogged";
          case MATS -> "the file does not say how full mats are";
          case GROUND -> "wet ground is a leak, which is a fault";
          case CREST -> "a crest out of level is a fault";
          case ROCKS -> "water behind the rocks is a fault";
          case CHAMBER -> "air in the pump is a fault";
        }
        : "it tells of a fault";
  }
}
