package rillwright.cli.study.balance;

import java.util.List;
import rillwright.solver.study.valvesetting.SetValve;
import rillwright.solver.study.valvesetting.ValveSettings;
import rillwright.solver.study.valvesetting.ValveSweep;

/**
 * What every fall gets while one valve after the other is moved.
 *
 * @param sweeps one for each valve that tells something, at least one
 * @param moved how many valves were moved, the first of those that could be
 * @param movable how many could be
 */
public record ValveSweeps(List<ValveSweep> sweeps, int moved, int movable) {
  /** A change of a share that can be seen. */
  private static final double NOTICEABLE = 0.005;

  /** Of a large job no more valves than a picture has room for tell something. */
  private static final int MOST_MOVED = 24;

  public ValveSweeps {
    sweeps = List.copyOf(sweeps);
  }

  /**
   * The throttled valves or, if there are none, those that change what a fall gets; if none does,
   * the first. Balances the network some forty times a valve, for the first valves of many.
   */
  public static ValveSweeps of(BalanceAnswer answer) {
    ValveSettings settings = answer.settings();
    List<SetValve> throttled = settings.listThrottled();
    List<SetValve> moved = throttled.isEmpty() ? settings.valves() : throttled;
    List<ValveSweep> all =
        moved.stream().limit(MOST_MOVED).map(set -> ValveSweep.of(settings, set)).toList();
    List<ValveSweep> telling =
        all.stream()
            .filter(sweep -> sweep.valve().role() != SetValve.Role.LEFT_ALONE)
            .filter(ValveSweeps::shows)
            .toList();
    if (telling.isEmpty()) {
      telling = all.stream().filter(ValveSweeps::shows).toList();
    }
    return new ValveSweeps(
        telling.isEmpty() ? all.subList(0, 1) : telling, all.size(), moved.size());
  }

  private static boolean shows(ValveSweep sweep) {
    return sweep.steps().stream()
        .flatMap(step -> step.shares().entrySet().stream())
        .anyMatch(
            share ->
                Math.abs(share.getValue() - sweep.steps().get(0).shares().get(share.getKey()))
                    > NOTICEABLE);
  }
}
