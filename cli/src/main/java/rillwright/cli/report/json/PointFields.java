package rillwright.cli.report.json;

import rillwright.solver.network.Fall;
import rillwright.solver.network.Point;
import rillwright.solver.network.Tee;
import rillwright.solver.steady.PointState;
import rillwright.solver.water.Water;

/** What is told about a point. */
final class PointFields {
  private final Json json;
  private final Water water;

  PointFields(Json json, Water water) {
    this.json = json;
    this.water = water;
  }

  void write(PointState state) {
    Point point = state.point();
    json.number("headM", state.headM());
    json.truth("determined", state.isDetermined());
    if (point instanceof Tee tee) {
      json.number("pressurePa", tee.pressurePa(state.headM(), water));
    }
    boolean waterLeavesHere = point.heldHeadM().isPresent() || point.spill().isPresent();
    if (waterLeavesHere) {
      json.number("flowM3PerS", state.outflowM3PerS());
    }
    if (point instanceof Fall fall) {
      double flow = state.outflowM3PerS();
      json.number("crestHeadM", fall.weir().headAt(flow));
      json.number("brinkDepthM", fall.weir().brinkDepthAt(flow));
    }
    if (state.missingHeadM().orElse(0) > 0) {
      json.number("missingHeadM", state.missingHeadM());
    }
  }
}
