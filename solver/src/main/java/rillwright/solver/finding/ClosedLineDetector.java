package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Lines that carry nothing because something in them is closed. */
final class ClosedLineDetector implements Detector {
  private static final String HELD_SHUT = "pump-held-shut";

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (LineState lineState : state.lines()) {
      Line line = lineState.line();
      if (lineState.open()) {
        continue;
      }
      String name = line.name().value();
      List<Part> blocked = Blockage.listIn(state.network(), line);
      if (blocked.stream().anyMatch(ClosedLineDetector::isShutValve)) {
        findings.add(valveShut(name));
      }
      boolean checkValve = line.has(CheckValve.class);
      blocked.stream()
          .filter(part -> !isShutValve(part) && !isDrySkimmer(state.network(), line, part))
          .forEach(part -> findings.add(clogged(name, part.kind())));
      List<Finding> pumps =
          line.placed(Pump.class).stream()
              .map(pump -> stillPump(state, line, pump.part()))
              .toList();
      boolean pushedShut = pumps.stream().map(Finding::code).allMatch(HELD_SHUT::equals);
      if (checkValve && blocked.isEmpty() && pushedShut) {
        findings.add(checkValveShut(name));
      }
      findings.addAll(pumps);
    }
    return findings;
  }

  private static Finding stillPump(SteadyState state, Line line, Pump pump) {
    String name = line.name().value();
    if (pump.set().speed() == 0) {
      return pumpStopped(name);
    }
    if (!Blockage.leavesAWayOut(state.network(), line)) {
      return pumpRunsAgainstShutWay(name);
    }
    return isCutOff(state, line)
        ? pumpRunsDry(name, line.from().value())
        : pumpHeldShut(name, pump.set().publishedShutOffHeadM());
  }

  /** Whether nothing can come to where a line begins. */
  private static boolean isCutOff(SteadyState state, Line pumped) {
    PointState from = state.point(pumped.from());
    if (from.isStarved()) {
      return true;
    }
    return from.point().heldHeadM().isEmpty()
        && state.network().lines().stream()
            .filter(line -> !line.name().equals(pumped.name()))
            .filter(line -> line.joins(pumped.from()))
            .noneMatch(line -> Blockage.listIn(state.network(), line).isEmpty());
  }

  /** Its sill stands out of the water: that is a finding of its own. */
  private static boolean isDrySkimmer(Network network, Line line, Part part) {
    return part instanceof Skimmer skimmer
        && network.settingOf(line).levelBeforeM().orElseThrow() <= skimmer.sillM();
  }

  private static boolean isShutValve(Part part) {
    return part instanceof Valve valve && valve.isShut();
  }

  /** A line held shut by its check valve. */
  private static Finding checkValveShut(String at) {
    return Finding.of(
        Severity.NOTE,
        "check-valve-shut",
        at,
        "The check valve in \""
            + at
            + "\" is shut: the downstream head exceeds the upstream head. If water should run here,"
            + " check the direction of the valve and the strength of the pump upstream.");
  }

  /** A line held shut by a valve. */
  private static Finding valveShut(String at) {
    return Finding.of(
        Severity.NOTE,
        "valve-shut",
        at,
        "The valve in \"" + at + "\" is shut: nothing runs through it.");
  }

  /** A line held shut by a filter or mouth that is clogged to the full. */
  private static Finding clogged(String at, String kind) {
    return Finding.of(
        Severity.PROBLEM,
        "clogged-shut",
        at,
        "The "
            + kind
            + " in \""
            + at
            + "\" lets nothing through: the file says that it is clogged altogether. Clean it;"
            + " switch off and unplug before reaching in.");
  }

  /** A running pump that moves no water. */
  private static Finding pumpHeldShut(String at, double shutOffHeadM) {
    return Finding.of(
            Severity.DANGER,
            HELD_SHUT,
            at,
            "The pump in \"" + at + "\" runs and moves no water: even its shut-off head of ")
        .head("shutOffHead", shutOffHeadM)
        .then(
            " does not lift it. It would overheat. Take a pump with more head, or lower the lift.");
  }

  /** A running pump whose every way on is shut. */
  private static Finding pumpRunsAgainstShutWay(String at) {
    return Finding.of(
        Severity.DANGER,
        "pump-runs-against-shut-way",
        at,
        "The pump in \""
            + at
            + "\" runs against a shut line and moves no water: it would overheat. Open the line, or"
            + " switch the pump off.");
  }

  /** A running pump that no water comes to. */
  private static Finding pumpRunsDry(String at, String from) {
    return Finding.of(
        Severity.DANGER,
        "pump-runs-dry",
        at,
        "No water comes into \""
            + from
            + "\": the pump in \""
            + at
            + "\" would run dry and fail. Switch it off until its supply is clear.");
  }

  /** A pump at speed 0. */
  private static Finding pumpStopped(String at) {
    return Finding.of(
        Severity.NOTE, "pump-stopped", at, "The pump in \"" + at + "\" stands still (speed 0 %).");
  }
}
