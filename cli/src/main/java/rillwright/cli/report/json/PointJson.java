package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.PRESSURE;

import java.util.Optional;
import rillwright.cli.json.Shape;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Point;
import rillwright.solver.network.Tee;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** A point of a solved network, for programs. */
record PointJson(SteadyState whole, PointState state) {
  static final Shape<PointJson> SHAPE =
      Shape.<PointJson>named("point", "What is so at a point.")
          .numberOrNull(
              "headM",
              METRES,
              "Total head; of a starved chamber its intake.",
              it -> it.state.headM())
          .truth(
              "determined",
              "Whether anything determines the head; false where headM is null.",
              it -> it.state.isDetermined())
          .ifAny(
              "pressurePa",
              PRESSURE.orNull(),
              "Tee: stagnation pressure above the air.",
              it ->
                  it.as(Tee.class)
                      .map(tee -> tee.pressurePa(it.state.headM(), it.whole.network().water())))
          .ifAny(
              "flowM3PerS",
              FLOW,
              "Flow out of the network here: over a fall, out of an outlet, into a basin (negative"
                  + " out of it).",
              it -> Optional.of(it.state.outflowM3PerS()).filter(flow -> it.waterLeavesHere()))
          .ifAny(
              "targetM3PerS",
              FLOW.above(0),
              "Flow that is wanted here, where the file has a target.",
              it -> it.state.point().targetM3PerS().stream().boxed().findFirst())
          .ifAny(
              "crestHeadM",
              METRES.from(0),
              "Fall: head upstream of the crest; 0 when dry.",
              it -> it.as(Fall.class).map(fall -> fall.weir().headAt(it.state.outflowM3PerS())))
          .ifAny(
              "brinkDepthM",
              METRES.from(0).orNull(),
              "Fall: thickness of the sheet at the brink; null where no rule is known.",
              it ->
                  it.as(Fall.class).map(fall -> fall.weir().brinkDepthAt(it.state.outflowM3PerS())))
          .ifAny(
              "missingHeadM",
              METRES.above(0),
              "Starved chamber only: intake less the level that its pipes would draw from.",
              it -> Optional.of(it.state.missingHeadM().orElse(0)).filter(missing -> missing > 0));

  private <P extends Point> Optional<P> as(Class<P> kind) {
    return Optional.of(state.point()).filter(kind::isInstance).map(kind::cast);
  }

  private boolean waterLeavesHere() {
    return state.point().heldHeadM().isPresent() || state.point().spill().isPresent();
  }
}
