package rillwright.solver.study.valvesetting;

import java.util.List;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Whether what one valve holds back goes to other falls, so that they must be set again. */
public final class Interplay {
  /** A change of flow that a bucket does not show, as a share. */
  private static final double NOTICEABLE = 0.005;

  /** Valves opened one by one, a balance each: of so many falls some share their water. */
  private static final int MOST_OPENED = 50;

  private Interplay() {}

  /**
   * Whether opening one of the throttled valves wide takes water from a fall. With more of them
   * than are opened it counts as if one did: then the crew looks twice.
   */
  public static boolean isIn(ValveSettings settings) {
    List<SetValve> throttled = settings.listThrottled();
    return throttled.size() > MOST_OPENED
        || throttled.stream().anyMatch(set -> takesFromAnother(settings, set));
  }

  private static boolean takesFromAnother(ValveSettings settings, SetValve set) {
    Valve.Setpoint wide = set.place().in(settings.wideOpen().network()).loss();
    SteadyState opened;
    try {
      opened =
          SteadyStateFinder.find(
              set.place().withLoss(settings.state().network(), wide), settings.state());
    } catch (NoBalance drawsGoShort) {
      return true;
    }
    List<PointState> points = settings.state().points();
    return points.stream()
        .filter(state -> state.outflowM3PerS() > 0)
        .anyMatch(
            state ->
                opened.point(state.point().name()).outflowM3PerS()
                    < (1 - NOTICEABLE) * state.outflowM3PerS());
  }
}
