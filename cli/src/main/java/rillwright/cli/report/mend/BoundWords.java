package rillwright.cli.report.mend;

import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.site.Need;

/** Why a class of change cannot do it. */
public final class BoundWords {
  private static final double HARDLY_MORE = 1e-6;

  private BoundWords() {}

  /** What a bound says about a fall that lacks water, in a sentence. */
  public static String of(Bound bound, Need need, ShownUnits units) {
    double most = bound.fallsM3PerS().get(need.point());
    double target = need.targetM3PerS().orElse(0);
    if (most <= need.hasM3PerS() * (1 + HARDLY_MORE)) {
      return nothing(bound.kind(), "\"" + need.at() + "\"");
    }
    return change(bound.kind())
        + " \""
        + need.at()
        + "\" gets "
        + units.flow(most)
        + " at most, "
        + units.share(most / target)
        + " of its target.";
  }

  /** Of falls for which there is none, in a sentence. */
  public static String without(String falls) {
    return "No bound is given for "
        + falls
        + ": its water comes from open water above it, or through several pumps one after another.";
  }

  private static String nothing(Bound.Kind kind, String at) {
    return switch (kind) {
      case VALVES -> "Valves: opening or closing one gives " + at + " no more.";
      case CLEANING -> "Cleaning: nothing on the way to " + at + " is clogged in the file.";
      case FITTINGS -> "Fittings: freer ones on the way to " + at + " give it no more.";
      case PUMP_SPEED -> "Pump speed: no speed up to full speed gives " + at + " more.";
      case ALL_LOSSES ->
          "Pipe, fittings, valves: with no loss anywhere " + at + " would get no more.";
      case PIPE_FRICTION -> "Pipe: wider pipe on the way to " + at + " gives it no more.";
    };
  }

  private static String change(Bound.Kind kind) {
    return switch (kind) {
      case VALVES -> "Valves: with its own wide open and every other way shut,";
      case CLEANING -> "Cleaning: with everything on its way clean,";
      case FITTINGS -> "Fittings: with no loss in any fitting or check valve on its way,";
      case PUMP_SPEED -> "Pump speed: with the pump at full speed,";
      case PIPE_FRICTION ->
          "Pipe: even if pipe, valves and fittings on the way to it took no head,";
      case ALL_LOSSES ->
          "Pipe, fittings, valves, speed: with no loss anywhere, every other fall shut and pumps at"
              + " full speed,";
    };
  }
}
