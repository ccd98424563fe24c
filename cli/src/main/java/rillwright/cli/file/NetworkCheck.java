package rillwright.cli.file;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.line.PlacedLine;
import rillwright.cli.file.part.PartStep;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Faults of a network that show without balancing it. */
final class NetworkCheck {
  private static final double TRIAL_FLOW_M3_PER_S = 1e-3;

  private final Ledger ledger;

  NetworkCheck(Ledger ledger) {
    this.ledger = ledger;
  }

  /**
   * Notes points that no line touches. A basin may stand alone; a tee or chamber alone is reported,
   * and left to the balance to refuse.
   */
  void untouchedPoints(List<Point> points, List<PlacedLine> lines, Function<PointName, Place> at) {
    Set<PointName> touched =
        lines.stream()
            .flatMap(placed -> Stream.of(placed.line().from(), placed.line().to()))
            .collect(Collectors.toSet());
    for (Point point : points) {
      if (touched.contains(point.name()) || point.kind().equals("basin")) {
        continue;
      }
      String what = "point " + PlainText.quoted(point.name().value());
      if (point.isWayOut()) {
        ledger.fault(
            at.apply(point.name()),
            what + ": no line ends at this " + point.kind() + ", so no water can reach it");
      } else {
        ledger.note(what + ": no line ends at this " + point.kind());
      }
    }
  }

  /** Notes gauges that are called as one before. */
  void gaugesOfOneName(List<PlacedLine> lines) {
    Map<String, Place> seen = new HashMap<>();
    for (PlacedLine placed : lines) {
      List<Part> parts = placed.line().parts();
      for (int i = 0; i < Math.min(parts.size(), placed.partPlaces().size()); i++) {
        if (parts.get(i) instanceof Gauge gauge && !gauge.name().isEmpty()) {
          Place place = placed.partPlaces().get(i);
          Place before = seen.putIfAbsent(gauge.name(), place);
          if (before != null) {
            ledger.fault(place, calledTheSame(placed.line(), i, gauge, before));
          }
        }
      }
    }
  }

  private static String calledTheSame(Line line, int index, Gauge gauge, Place before) {
    return "line "
        + PlainText.quoted(line.name().value())
        + ": "
        + PartStep.stepsOf(line.parts().stream().map(Part::kind).toList()).get(index)
        + ": name: the gauge in line "
        + before.line()
        + " is called "
        + PlainText.quoted(gauge.name())
        + " too; give each gauge its own name";
  }

  /** Notes lines that take no head whatever flows. */
  void headlessLines(Network network, WhereWritten places) {
    for (Line line : network.lines()) {
      boolean planned = line.has(PlannedPump.class);
      if (!planned && takesNoHead(network.lawOf(line))) {
        ledger.fault(
            places.ofLine(line.name()),
            "line "
                + PlainText.quoted(line.name().value())
                + ": nothing in this line takes any head, so its flow is undetermined; write what"
                + " it consists of, for example \"run: 3 ft\", or make its two ends one point");
      }
    }
  }

  /** Whether a law lets water through and is flat wherever it does. */
  private static boolean takesNoHead(HeadLaw law) {
    double forward = Math.min(TRIAL_FLOW_M3_PER_S, law.greatestFlow() / 2);
    double backward = Math.max(-TRIAL_FLOW_M3_PER_S, law.leastFlow() / 2);
    boolean flows = forward > 0 || backward < 0;
    return flows
        && !(forward > 0 && takesHead(law, forward))
        && !(backward < 0 && takesHead(law, backward));
  }

  private static boolean takesHead(HeadLaw law, double flowM3PerS) {
    return law.slopeAt(flowM3PerS) > 0 || law.headLossAt(flowM3PerS) != 0;
  }
}
