package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.ChangeOfBore;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Tee;

/**
 * Holds a steady state against the laws of its network, with nothing of the balance but its answer:
 * what is wrong with it, in words.
 */
final class BalanceAudit {
  private static final double HEAD_TOLERANCE_M = 1e-9;

  private final Network network;
  private final SteadyState state;
  private final Map<LineState, HeadLaw> laws = new HashMap<>();
  private final List<String> faults = new ArrayList<>();
  private final double flowTolerance;
  private final double headTolerance;

  private BalanceAudit(SteadyState state) {
    this.network = state.network();
    this.state = state;
    double largest = 0;
    for (LineState line : state.lines()) {
      largest = Math.max(largest, Math.abs(line.flowM3PerS()));
    }
    for (PointState point : state.points()) {
      largest = Math.max(largest, Math.abs(point.outflowM3PerS()));
    }
    this.flowTolerance = Math.max(1e-9 * largest, 1e-12);
    state.lines().forEach(line -> laws.put(line, network.lawOf(line.line())));
    this.headTolerance = headTolerance();
  }

  /** 1e-9 m; where heads run beyond a kilometre their last digits alone are more. */
  private double headTolerance() {
    double largest = 0;
    for (PointState point : state.points()) {
      largest = Math.max(largest, Math.abs(point.drawnHeadM().orElse(0)));
    }
    for (Map.Entry<LineState, HeadLaw> line : laws.entrySet()) {
      double loss = line.getValue().headLossAt(line.getKey().flowM3PerS());
      largest = Math.max(largest, Math.abs(loss));
    }
    return Math.max(HEAD_TOLERANCE_M, 1e-12 * largest);
  }

  /** What is wrong with a state; empty if it is a balance. */
  static List<String> faults(SteadyState state) {
    BalanceAudit audit = new BalanceAudit(state);
    state.points().forEach(audit::point);
    state.lines().forEach(audit::line);
    audit.require(
        state.flowErrorM3PerS() <= audit.flowTolerance,
        "reported flow error",
        "is " + state.flowErrorM3PerS());
    audit.require(
        state.headErrorM() <= audit.headTolerance,
        "reported head error",
        "is " + state.headErrorM());
    boolean full =
        state.lines().stream()
            .allMatch(
                line ->
                    line.course() instanceof Course.Full || line.course() instanceof Course.Swept);
    if (full) {
      audit.faults.addAll(DeterminedHeads.faults(state, audit.laws, audit.headTolerance));
    }
    return audit.faults;
  }

  private void require(boolean holds, String name, String fault) {
    if (!holds) {
      faults.add(name + ": " + fault);
    }
  }

  private void point(PointState point) {
    String name = point.point().name().value();
    double surplus = -point.outflowM3PerS();
    for (LineState line : state.lines()) {
      surplus += line.line().to().equals(point.point().name()) ? line.flowM3PerS() : 0;
      surplus -= line.line().from().equals(point.point().name()) ? line.flowM3PerS() : 0;
    }
    require(Math.abs(surplus) <= flowTolerance, name, "flows are off by " + surplus);
    if (point.point() instanceof Basin basin) {
      require(point.headM().getAsDouble() == basin.levelM(), name, "not at its level");
    } else if (point.point() instanceof Tee tee) {
      require(point.outflowM3PerS() == tee.drawM3PerS(), name, "draw not met");
    } else if (point.point() instanceof Chamber chamber) {
      chamber(point, chamber);
    } else if (point.point() instanceof Fall fall) {
      fall(point, fall);
    } else if (point.point() instanceof Outlet outlet) {
      outlet(point, outlet);
    }
  }

  private void chamber(PointState point, Chamber chamber) {
    String name = chamber.name().value();
    require(point.outflowM3PerS() == 0, name, "water vanishes");
    if (point.isStarved()) {
      require(point.headM().getAsDouble() == chamber.intakeM(), name, "starved above its intake");
      require(point.missingHeadM().getAsDouble() >= 0, name, "starved and lacks nothing");
    } else if (point.headM().isPresent()) {
      double above = point.headM().getAsDouble() - chamber.intakeM();
      require(above >= -headTolerance, name, "below its intake by " + -above);
    }
  }

  private void fall(PointState point, Fall fall) {
    String name = fall.name().value();
    double flow = point.outflowM3PerS();
    if (flow == 0) {
      double above = point.headM().orElse(fall.crestM()) - fall.crestM();
      require(above <= headTolerance, name, "dry with water " + above + " above its crest");
      return;
    }
    double head = point.headM().getAsDouble() - fall.crestM();
    double least = fall.weir().flowAt(Math.max(0, head - headTolerance));
    double most = fall.weir().flowAt(Math.max(0, head + headTolerance));
    double rounding = 1e-13 * flow;
    require(
        flow > 0 && flow >= least - rounding && flow <= most + rounding,
        name,
        "passes " + flow + ", its weir " + least + " to " + most);
  }

  private void outlet(PointState point, Outlet outlet) {
    String name = outlet.name().value();
    double level = outlet.levelM().orElse(outlet.elevationM());
    double flow = point.outflowM3PerS();
    boolean underWater = outlet.levelM().isPresent();
    require(underWater || flow >= 0, name, "an outlet in air sucks");
    if (flow == 0 && !underWater) {
      require(point.headM().orElse(level) <= level + headTolerance, name, "holds water back");
      return;
    }
    double head = 0;
    if (outlet.nozzle().isPresent()) {
      double area = Math.PI / 4 * Math.pow(outlet.nozzle().get().opening().diameterM(), 2);
      double speed = flow / (outlet.nozzle().get().dischargeCoefficient() * area);
      head = speed * Math.abs(speed) / (2 * 9.80665);
    }
    OptionalDouble reported = point.headM();
    double error = reported.isEmpty() ? 0 : reported.getAsDouble() - level - head;
    require(reported.isPresent() || flow == 0, name, "flows at no known head");
    require(Math.abs(error) <= headTolerance, name, "head is off by " + error);
  }

  private void line(LineState line) {
    String name = line.line().name().value();
    if (line.course() instanceof Course.NotStarted || line.course() instanceof Course.Vented) {
      ClimbAudit.faults(state, line, headTolerance)
          .forEach(fault -> faults.add(name + ": " + fault));
      return;
    }
    HeadLaw law = laws.get(line);
    double flow = line.flowM3PerS();
    require(
        flow >= law.leastFlow() && flow <= law.greatestFlow(),
        name,
        "runs where it cannot: " + flow);
    boolean oneWay = law.leastFlow() == 0 || law.greatestFlow() == 0;
    require(line.open() == !(flow == 0 && oneWay), name, "says open " + line.open());
    double loss = law.headLossAt(flow);
    boolean maySpeedUp = flow < law.greatestFlow();
    boolean maySlowDown = flow > law.leastFlow();
    if (flow >= 0) {
      OptionalDouble drop = minus(drawn(line.line().from()), seenRunningIn(line.line().to()));
      double error = drop.orElse(loss) - loss;
      require(!maySpeedUp || error <= headTolerance, name, "head pushes on by " + error);
      require(flow == 0 || error >= -headTolerance, name, "runs though it lacks " + -error);
    }
    if (flow <= 0) {
      OptionalDouble drop = minus(seenRunningIn(line.line().from()), drawn(line.line().to()));
      double error = drop.orElse(loss) - loss;
      require(!maySlowDown || error >= -headTolerance, name, "head pushes back by " + -error);
      require(flow == 0 || error <= headTolerance, name, "runs back though it lacks " + error);
    }
    if (line.open() && flow < law.greatestFlow() && line.headLossM().isPresent()) {
      double sum = line.entranceLossM() + line.exitLossM();
      for (PartState part : line.parts()) {
        sum += part.headLossM().getAsDouble();
      }
      for (ChangeOfBore change : line.line().changesOfBore()) {
        sum += line.headLossM(change).getAsDouble();
      }
      double off = Math.abs(sum - line.headLossM().getAsDouble());
      require(flow == 0 || off <= headTolerance, name, "parts and line differ by " + off);
    }
  }

  private OptionalDouble drawn(PointName point) {
    return state.point(point).drawnHeadM();
  }

  private OptionalDouble seenRunningIn(PointName point) {
    return state.point(point).headM();
  }

  private static OptionalDouble minus(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(one.getAsDouble() - other.getAsDouble())
        : OptionalDouble.empty();
  }
}
