package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.ChangeOfBore;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Setting;

/** The heads along one line. */
final class PartHeads {
  private final Line line;
  private final Setting setting;
  private final List<HeadLaw> laws;
  private final List<ChangeOfBore> changes;
  private final Course course;
  private final double flow;
  private final OptionalDouble headFrom;
  private final OptionalDouble headTo;

  PartHeads(
      Network network,
      Line line,
      Course course,
      double flow,
      OptionalDouble headFrom,
      OptionalDouble headTo) {
    this.line = line;
    this.setting = network.settingOf(line);
    this.laws = network.ownLawsOf(line);
    this.changes =
        line.changesOfBore().stream()
            .filter(
                change -> !(course instanceof Course.Vented vent && change.spans(vent.highPoint())))
            .toList();
    this.course = course;
    this.flow = flow;
    this.headFrom = headFrom;
    this.headTo = headTo;
  }

  /** Head taken at the line's first end, m; none where water falls to it beside air. */
  double entranceLossM() {
    return isAir(-1) ? 0 : laws.get(0).headLossAt(flow);
  }

  /** Head taken at the line's second end, m; none where water falls to it beside air. */
  double exitLossM() {
    return isAir(line.parts().size()) ? 0 : laws.get(laws.size() - 1).headLossAt(flow);
  }

  /** Whether water falls beside air at a place among the line's parts. */
  private boolean isAir(int place) {
    return course instanceof Course.Vented vented
        && (vented.forward() ? place > vented.highPoint() : place < vented.highPoint());
  }

  /**
   * In a line with flow; at a vented high point the water loses all that it has over the point that
   * it falls to.
   */
  List<PartState> running() {
    int vent = course instanceof Course.Vented vented ? vented.highPoint() : -1;
    List<PartState> states = new ArrayList<>();
    OptionalDouble head = isAir(-1) ? headFrom : minus(headFrom, entranceLossM());
    for (int i = 0; i < line.parts().size(); i++) {
      double change = lossAtChangeM(i);
      OptionalDouble before = isAir(i) ? OptionalDouble.empty() : minus(head, change);
      OptionalDouble loss = OptionalDouble.of(laws.get(i + 1).headLossAt(flow));
      if (isAir(i)) {
        loss = OptionalDouble.empty();
      } else if (i == vent) {
        loss = lossAtVent(head);
        before = ventHead(head);
      }
      states.add(new PartState(line.parts().get(i), flow, loss, before));
      head = loss.isPresent() ? minus(head, change + loss.getAsDouble()) : head;
    }
    return states;
  }

  /** Head taken where the bore changes upstream of a part, m. */
  private double lossAtChangeM(int place) {
    return changes.stream()
        .filter(change -> change.after().index() == place)
        .mapToDouble(change -> change.law().headLossAt(flow))
        .sum();
  }

  /** Head on the side of the vent from which the water comes. */
  private OptionalDouble ventHead(OptionalDouble headHere) {
    return isAir(-1) ? plusRest(headTo) : headHere;
  }

  private OptionalDouble lossAtVent(OptionalDouble headHere) {
    OptionalDouble beyond = isAir(-1) ? plusRest(headTo) : headTo;
    return headHere.isPresent() && beyond.isPresent()
        ? OptionalDouble.of(headHere.getAsDouble() - beyond.getAsDouble())
        : OptionalDouble.empty();
  }

  /** The head at the vent of water that comes from the line's second end. */
  private OptionalDouble plusRest(OptionalDouble head) {
    double rest = exitLossM();
    for (int i = line.parts().size() - 1; !isAir(i); i--) {
      rest += laws.get(i + 1).headLossAt(flow) + lossAtChangeM(i);
    }
    return minus(head, -rest);
  }

  /**
   * In a line without flow a place has the head of the side that it is not cut off from, plus the
   * shut-off head of a running pump between; cut off on both sides it has none. Water that does not
   * start comes no farther than the high point.
   */
  List<PartState> atRest() {
    List<Part> parts = line.parts();
    List<OptionalDouble> fromUpstream = new ArrayList<>();
    OptionalDouble head = headFrom;
    for (Part part : parts) {
      fromUpstream.add(head);
      OptionalDouble loss = isBarred(part) ? OptionalDouble.empty() : part.headLossAtRest(setting);
      head = loss.isPresent() ? minus(head, loss.getAsDouble()) : OptionalDouble.empty();
    }
    List<PartState> states = new ArrayList<>();
    head = headTo;
    for (int i = parts.size() - 1; i >= 0; i--) {
      HeadLaw law = parts.get(i).law(setting);
      boolean passesBack = law.leastFlow() < 0 && law.greatestFlow() > 0 && !isBarred(parts.get(i));
      head = passesBack ? minus(head, -law.headLossAt(0)) : OptionalDouble.empty();
      OptionalDouble before = head.isPresent() ? head : fromUpstream.get(i);
      states.add(0, new PartState(parts.get(i), 0, OptionalDouble.empty(), before));
    }
    return states;
  }

  private boolean isBarred(Part part) {
    return part instanceof HighPoint && course instanceof Course.NotStarted;
  }

  private static OptionalDouble minus(OptionalDouble head, double loss) {
    return head.isPresent() ? OptionalDouble.of(head.getAsDouble() - loss) : head;
  }
}
