package rillwright.cli.report.json;

import java.util.OptionalDouble;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;

/** What is told about a part: of most the head that it takes. */
final class PartFields {
  private final Json json;
  private final Network network;

  PartFields(Json json, Network network) {
    this.json = json;
    this.network = network;
  }

  void write(PartState state, LineState line) {
    Part part = state.part();
    json.words("part", part.kind());
    if (part instanceof Gauge gauge) {
      json.words("name", gauge.name());
      json.number("pressurePa", GaugeReading.pressurePa(gauge, state, network.water()));
    } else if (part instanceof Pump pump) {
      json.number("flowM3PerS", state.flowM3PerS());
      json.number("headM", pump.set().headAt(state.flowM3PerS()));
      json.number("powerW", pump.set().powerAt(state.flowM3PerS()));
    } else {
      json.number("headLossM", state.headLossM());
      if (part instanceof Run run) {
        run(run, state.flowM3PerS(), line);
      }
    }
  }

  private void run(Run run, double flowM3PerS, LineState line) {
    json.number("reynolds", run.reynoldsAt(flowM3PerS, network.water()));
    json.number(
        "frictionFactor",
        flowM3PerS == 0
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                run.law(network.settingOf(line.line())).darcyFrictionFactorAt(flowM3PerS)));
  }
}
