package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.SteadyState;

/** Lines that carry nothing because something in them is closed. */
final class ClosedLineDetector implements Detector {

  /** A line held shut by its check valve. */
  record CheckValveShut(String at) implements Finding {
    @Override
    public String code() {
      return "check-valve-shut";
    }

    @Override
    public String message(Wording wording) {
      return "The check valve in \""
          + at
          + "\" is shut: the head behind it is higher than what pushes at it. If water should run here, see which way"
          + " the valve points, and whether the pump before it is strong enough.";
    }
  }

  /** A line held shut by a valve. */
  record ValveShut(String at) implements Finding {
    @Override
    public String code() {
      return "valve-shut";
    }

    @Override
    public String message(Wording wording) {
      return "The valve in \"" + at + "\" is shut: nothing runs through it.";
    }
  }

  /** A running pump that moves no water. */
  record PumpHeldShut(String at, double shutOffHeadM) implements Finding {
    @Override
    public String code() {
      return "pump-held-shut";
    }

    @Override
    public String message(Wording wording) {
      return "The pump in \""
          + at
          + "\" runs and moves no water: even its shut-off head of "
          + wording.head(shutOffHeadM)
          + " does not lift it. It would overheat. Take a pump with more head, or lower the lift.";
    }
  }

  /** A pump at speed 0. */
  record PumpStopped(String at) implements Finding {
    @Override
    public String code() {
      return "pump-stopped";
    }

    @Override
    public String message(Wording wording) {
      return "The pump in \"" + at + "\" stands still (speed 0 %).";
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (LineState lineState : state.lines()) {
      Line line = lineState.line();
      if (lineState.open()) {
        continue;
      }
      String name = line.name().value();
      boolean valveShut = line.parts().stream().anyMatch(ClosedLineDetector::isShutValve);
      if (valveShut) {
        findings.add(new ValveShut(name));
      } else if (line.parts().stream().anyMatch(CheckValve.class::isInstance)) {
        findings.add(new CheckValveShut(name));
      }
      for (Part part : line.parts()) {
        if (part instanceof Pump pump) {
          boolean stopped = pump.set().speed() == 0;
          findings.add(
              stopped
                  ? new PumpStopped(name)
                  : new PumpHeldShut(name, pump.set().publishedShutOffHeadM()));
        }
      }
    }
    return findings;
  }

  private static boolean isShutValve(Part part) {
    return part instanceof Valve valve && valve.isShut();
  }
}
