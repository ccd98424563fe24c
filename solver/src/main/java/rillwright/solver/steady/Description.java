package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Setting;
import rillwright.solver.network.topology.NetworkGraph;

/** Tells a balance in the words of the network. */
final class Description {
  private final Network network;
  private final NetworkGraph graph;
  private final Imposed imposed;
  private final Solved solved;
  private final Map<PointName, Starved> starved;

  Description(Network network, Imposed imposed, Solved solved, Map<PointName, Starved> starved) {
    this.network = network;
    this.graph = new NetworkGraph(network);
    this.imposed = imposed;
    this.solved = solved;
    this.starved = starved;
  }

  PointState of(Point point) {
    if (starved.containsKey(point.name())) {
      double intake = starved.get(point.name()).intakeM();
      double missing = intake - new DrawnLevels(network, solved, starved).levelM(point.name());
      return new PointState(point, OptionalDouble.of(intake), OptionalDouble.of(missing), 0);
    }
    return new PointState(
        point, solved.headM(point.name()), OptionalDouble.empty(), outflow(point));
  }

  private double outflow(Point point) {
    if (imposed.outflowM3PerS().containsKey(point.name())) {
      return imposed.outflowM3PerS().get(point.name());
    }
    if (solved.spillOf().containsKey(point.name())) {
      return solved.balance().flowM3PerS(solved.spillOf().get(point.name()));
    }
    if (point.heldHeadM().isEmpty()) {
      return point.drawM3PerS();
    }
    double sum = 0;
    for (Line line : graph.linesAt(point.name())) {
      double flow = flow(line);
      sum += line.to().equals(point.name()) ? flow : -flow;
    }
    return sum;
  }

  private double flow(Line line) {
    Double given = imposed.lineFlowM3PerS().get(line.name());
    return given != null ? given : solved.flowM3PerS(line.name());
  }

  LineState of(Line line) {
    double flow = flow(line);
    OptionalDouble headFrom = headAtEnd(line, line.from());
    OptionalDouble headTo = headAtEnd(line, line.to());
    OptionalDouble loss =
        headFrom.isPresent() && headTo.isPresent()
            ? OptionalDouble.of(headFrom.getAsDouble() - headTo.getAsDouble())
            : OptionalDouble.empty();
    List<HeadLaw> laws = network.lawsOf(line);
    HeadLaw law = network.lawOf(line);
    boolean letsWaterBothWays = law.leastFlow() < 0 && law.greatestFlow() > 0;
    boolean open = flow != 0 || letsWaterBothWays;
    return new LineState(
        line,
        flow,
        loss,
        open,
        laws.get(0).headLossAt(flow),
        open ? running(line, laws, flow, headFrom) : atRest(line, headFrom, headTo),
        laws.get(laws.size() - 1).headLossAt(flow));
  }

  /** The head that a line sees at one of its ends. */
  private OptionalDouble headAtEnd(Line line, PointName end) {
    Starved chamber = starved.get(end);
    boolean draws = chamber == null || (line.from().equals(end) ? flow(line) > 0 : flow(line) < 0);
    return draws ? solved.headM(end) : OptionalDouble.of(chamber.intakeM());
  }

  private static List<PartState> running(
      Line line, List<HeadLaw> laws, double flow, OptionalDouble headFrom) {
    List<PartState> states = new ArrayList<>();
    OptionalDouble head = minus(headFrom, laws.get(0).headLossAt(flow));
    for (int i = 0; i < line.parts().size(); i++) {
      double loss = laws.get(i + 1).headLossAt(flow);
      states.add(new PartState(line.parts().get(i), flow, OptionalDouble.of(loss), head));
      head = minus(head, loss);
    }
    return states;
  }

  /**
   * In a line without flow a place has the head of the side that it is not cut off from, plus the
   * shut-off head of a running pump between; cut off on both sides it has none.
   */
  private List<PartState> atRest(Line line, OptionalDouble headFrom, OptionalDouble headTo) {
    Setting setting = network.settingOf(line);
    List<Part> parts = line.parts();
    List<OptionalDouble> fromUpstream = new ArrayList<>();
    OptionalDouble head = headFrom;
    for (Part part : parts) {
      fromUpstream.add(head);
      OptionalDouble loss = part.headLossAtRest(setting);
      head = loss.isPresent() ? minus(head, loss.getAsDouble()) : OptionalDouble.empty();
    }
    List<PartState> states = new ArrayList<>();
    head = headTo;
    for (int i = parts.size() - 1; i >= 0; i--) {
      HeadLaw law = parts.get(i).law(setting);
      boolean passesBack = law.leastFlow() < 0 && law.greatestFlow() > 0;
      head = passesBack ? minus(head, -law.headLossAt(0)) : OptionalDouble.empty();
      OptionalDouble before = head.isPresent() ? head : fromUpstream.get(i);
      states.add(0, new PartState(parts.get(i), 0, OptionalDouble.empty(), before));
    }
    return states;
  }

  private static OptionalDouble minus(OptionalDouble head, double loss) {
    return head.isPresent() ? OptionalDouble.of(head.getAsDouble() - loss) : head;
  }
}
