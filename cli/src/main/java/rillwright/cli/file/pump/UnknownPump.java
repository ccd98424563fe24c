package rillwright.cli.file.pump;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;

/**
 * A pump without a data sheet: its shut-off head H0, the flow Q0 at which it runs out, and how its
 * curve bends between, H = H0 (1 − (Q/Q0)^bend). That most pumps of ponds bend by 1.3 to 3 is
 * common practice, no source.
 */
public final class UnknownPump {
  /** The field that says what is known of it. */
  public static final String FIELD = "unknown";

  private static final String SHUT_OFF = "shut-off";
  private static final String RUNS_OUT = "runs out";
  private static final String BEND = "bend";
  private static final String USUAL_BEND = "1.3 .. 3";
  private static final String PUMPS = "pumps";
  private static final Range BENDS = Range.between(1, 10, "must be 1 to 10");
  private static final int POINTS = 10;

  private UnknownPump() {}

  /** The tree with the usual range of the bend where one of its unknown pumps says none. */
  public static MapNode withBends(MapNode tree) {
    MapNode changed = tree;
    for (Entry pump : tree.findMap(PUMPS).map(MapNode::entries).orElse(List.of())) {
      Optional<MapNode> unknown =
          Optional.of(pump.value())
              .filter(MapNode.class::isInstance)
              .flatMap(map -> ((MapNode) map).findMap(FIELD));
      if (unknown.isPresent() && unknown.get().find(BEND).isEmpty()) {
        Scalar usual = new Scalar(USUAL_BEND, Scalar.Form.TEXT, unknown.get().place());
        MapNode known = unknown.get().with(new Entry(BEND, unknown.get().place(), usual));
        MapNode fields = with((MapNode) pump.value(), FIELD, known);
        MapNode pumps = with(changed.findMap(PUMPS).orElseThrow(), pump.key(), fields);
        changed = with(changed, PUMPS, pumps);
      }
    }
    return changed;
  }

  private static MapNode with(MapNode map, String key, MapNode value) {
    Entry entry = map.find(key).orElseThrow();
    return map.with(new Entry(key, entry.keyPlace(), value));
  }

  /** The sheet that its fields make; empty, with the faults noted, if they are wrong. */
  static Optional<DataSheet> read(String name, Fields fields, Measure head, SheetFacts facts) {
    Fields known = fields.findFields(FIELD, List.of(SHUT_OFF, RUNS_OUT, BEND)).orElseThrow();
    double shutOff = known.require(SHUT_OFF, head, Range.POSITIVE, "4 m .. 12 m");
    double runsOut = known.require(RUNS_OUT, Measure.FLOW, Range.POSITIVE, "5 m3/h .. 25 m3/h");
    double bend = known.find(BEND, Measure.NUMBER, BENDS).orElse(2);
    List<PumpPoint> points = new ArrayList<>();
    for (int i = 0; i <= POINTS && shutOff > 0 && runsOut > 0; i++) {
      double share = (double) i / POINTS;
      points.add(
          new PumpPoint(
              share * runsOut,
              headM(shutOff, runsOut, bend, share * runsOut),
              OptionalDouble.empty(),
              OptionalDouble.empty()));
    }
    return fields.areSound() && known.areSound()
        ? Optional.of(
            new DataSheet(name, new PumpCurve(points), facts, List.of(), false, Optional.empty()))
        : Optional.empty();
  }

  /** Its head at a flow, m; 0 where it has run out. */
  public static double headM(
      double shutOffM, double runsOutM3PerS, double bend, double flowM3PerS) {
    return Math.max(0, shutOffM * (1 - Math.pow(flowM3PerS / runsOutM3PerS, bend)));
  }

  /** Steps to a pump's shut-off head, to the flow at which it runs out, and to its bend. */
  public static List<List<String>> steps(String pump) {
    return Stream.of(SHUT_OFF, RUNS_OUT, BEND)
        .map(field -> List.of(PUMPS, pump, FIELD, field))
        .toList();
  }
}
