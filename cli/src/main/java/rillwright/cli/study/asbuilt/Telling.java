package rillwright.cli.study.asbuilt;

import rillwright.solver.network.Filter;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Sight;

/**
 * Tells what says something of a job in which nothing is wrong from what only finds faults: a net
 * that looks dirty is clogged by some of the share that the file leaves open, wet ground is a leak.
 */
final class Telling {
  private Telling() {}

  static boolean isOf(Measurand what, Network network) {
    if (what instanceof Meter meter) {
      return switch (meter.kind()) {
        case HANDLE, MOUTH, BOX -> true;
        case VOLTS, FALLS -> false;
      };
    }
    return !(what instanceof Sight sight)
        || ((sight.look() == Look.NET || sight.look() == Look.FILTER)
            && network.line(new LineName(sight.at())).has(Filter.class));
  }
}
