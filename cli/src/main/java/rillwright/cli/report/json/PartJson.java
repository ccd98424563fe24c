package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.POWER;
import static rillwright.cli.json.Quantity.PRESSURE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.pumping.PumpSuction;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;

/**
 * Something that the water meets in a solved line, for programs: of most the head that it takes.
 *
 * @param kind what it is
 * @param headLossM that it takes, m
 * @param state of the part; empty for an end of the line and a change of bore
 */
record PartJson(
    String kind,
    OptionalDouble headLossM,
    Optional<PartState> state,
    LineState line,
    SteadyState whole) {
  private static final String LOSS_MEANING = "Head that it takes, in the direction of the line.";

  private static final Shape<PartJson> GAUGE =
      of("gaugePart", "A gauge.", "gauge")
          .words("name", "Its name.", part -> part.as(Gauge.class).name())
          .numberOrNull(
              "pressurePa",
              PRESSURE,
              "What it reads; null where nothing determines it.",
              part ->
                  GaugeReading.pressurePa(
                      part.as(Gauge.class), part.part(), part.whole.network().water()));

  private static final Shape<PartJson> PUMP =
      of("pumpPart", "Pumps at one place.", "pump")
          .number("flowM3PerS", FLOW, "Flow through all of them.", PartJson::flow)
          .number(
              "headM",
              METRES,
              "Head that they give.",
              part -> part.as(Pump.class).set().headAt(part.flow()))
          .numberOrNull(
              "powerW",
              POWER,
              "Power of all of them; null if the data sheet has none.",
              part -> part.as(Pump.class).set().powerAt(part.flow()))
          .number(
              "shutOffHeadM",
              METRES,
              "Head that they give at no flow, as the data sheet has it at this speed.",
              part -> part.as(Pump.class).set().publishedShutOffHeadM())
          .number(
              "rangeM3PerS",
              FLOW.from(0),
              "Greatest flow of the data sheet's curve, for all of them at this speed.",
              part -> part.as(Pump.class).set().publishedRangeM3PerS())
          .numberOrNull(
              "npshAvailableM",
              METRES,
              "Net positive suction head available; null where the inlet's elevation is not known.",
              part -> part.suction().npshAvailableM())
          .numberOrNull(
              "npshRequiredM",
              METRES.from(0),
              "What the data sheet asks for at that flow; null if it does not say.",
              part -> part.suction().npshRequiredM());

  private static final Shape<PartJson> RUN =
      of("runPart", "A run of pipe.", "run")
          .numberOrNull("headLossM", METRES, LOSS_MEANING, PartJson::headLossM)
          .number(
              "reynolds",
              NUMBER.from(0),
              "Reynolds number.",
              part -> part.as(Run.class).reynoldsAt(part.flow(), part.whole.network().water()))
          .numberOrNull(
              "frictionFactor",
              NUMBER.above(0),
              "Darcy friction factor; null at no flow.",
              PartJson::frictionFactor);

  private static final Shape<PartJson> LOSS =
      of(
              "lossPart",
              "Any other part, a change of bore between two runs, or an end of the line.",
              "fitting",
              "valve",
              "check valve",
              "skimmer",
              "filter",
              "high point",
              "loss",
              "entrance",
              "exit",
              "change of bore")
          .numberOrNull("headLossM", METRES, LOSS_MEANING, PartJson::headLossM);

  /** What any of them is written as. */
  static final Value<PartJson> VALUE =
      Value.either(PartJson::shape, List.of(GAUGE, PUMP, RUN, LOSS));

  private static Shape<PartJson> of(String name, String meaning, String... kinds) {
    return Shape.<PartJson>named(name, meaning)
        .member("part", Value.oneOf(kinds), "What it is.", PartJson::kind);
  }

  /** All in a line, in order, its ends included. */
  static List<PartJson> list(LineState line, SteadyState whole) {
    List<PartJson> parts = new ArrayList<>();
    parts.add(without("entrance", OptionalDouble.of(line.entranceLossM()), line, whole));
    for (int i = 0; i < line.parts().size(); i++) {
      PartState part = line.parts().get(i);
      line.line()
          .changeOfBoreAt(i)
          .ifPresent(
              change -> parts.add(without(change.kind(), line.headLossM(change), line, whole)));
      parts.add(new PartJson(part.part().kind(), part.headLossM(), Optional.of(part), line, whole));
    }
    parts.add(without("exit", OptionalDouble.of(line.exitLossM()), line, whole));
    return parts;
  }

  /** What the water meets without it being a part. */
  private static PartJson without(
      String kind, OptionalDouble headLossM, LineState line, SteadyState whole) {
    return new PartJson(kind, headLossM, Optional.empty(), line, whole);
  }

  private Value<PartJson> shape() {
    return switch (kind) {
      case "gauge" -> GAUGE;
      case "pump" -> PUMP;
      case "run" -> RUN;
      default -> LOSS;
    };
  }

  private PartState part() {
    return state.orElseThrow();
  }

  private <P> P as(Class<P> type) {
    return type.cast(part().part());
  }

  private PumpSuction suction() {
    return PumpSuction.of(whole, line, line.parts().indexOf(part())).orElseThrow();
  }

  private double flow() {
    return part().flowM3PerS();
  }

  private OptionalDouble frictionFactor() {
    return flow() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            as(Run.class)
                .law(whole.network().settingOf(line.line()))
                .darcyFrictionFactorAt(flow()));
  }
}
