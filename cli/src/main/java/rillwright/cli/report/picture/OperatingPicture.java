package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.curve.Curves;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.CurveSeries;
import rillwright.curves.chart.content.FlowMark;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.content.OperatingPoint.Valves;
import rillwright.curves.chart.content.PowerSeries;
import rillwright.curves.chart.content.PumpCurveSeries;
import rillwright.curves.trace.PumpTrace;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Pump;
import rillwright.solver.study.duty.Duty;

/** The picture of the operating point: pump curve over system curve. */
public final class OperatingPicture {
  /** Whether the pump's power is drawn too. */
  public enum Power {
    SHOWN,
    LEFT_OUT
  }

  private final Curves curves;
  private final ShownUnits units;

  private OperatingPicture(Curves curves) {
    this.curves = curves;
    this.units = Shown.of(curves);
  }

  /** What is to be drawn. */
  public static OperatingChart of(Curves curves, Power power) {
    return new OperatingPicture(curves).chart(power);
  }

  private OperatingChart chart(Power power) {
    List<CurvePoint> system = curves.system().points();
    Optional<PowerSeries> watts =
        curves
            .pump()
            .filter(pump -> power == Power.SHOWN)
            .map(pump -> PumpTrace.power(pump.set()))
            .filter(points -> points.size() > 1)
            .map(points -> new PowerSeries("power drawn", points));
    return new OperatingChart(
        curves.title(),
        caption(),
        units.flowUnit(),
        units.headUnit(),
        system.size() > 1 ? List.of(new CurveSeries("system curve", system)) : List.of(),
        curves.pump().map(this::pumpSeries).map(List::of).orElse(List.of()),
        operatingPoints(),
        flowLimit(),
        StaticHeadMark.of(curves.system(), units),
        watts);
  }

  private String caption() {
    String line = "Pump in line \"" + curves.place().line().value() + "\"";
    return curves.pump().isPresent() ? line : line + ", still to be chosen";
  }

  private PumpCurveSeries pumpSeries(Pump pump) {
    PumpSet set = pump.set();
    List<CurvePoint> beyond =
        PumpTrace.beyond(set, curves.toFlowM3PerS()).stream()
            .filter(point -> point.headM() >= 0)
            .toList();
    List<CurvePoint> sheet =
        set.speed() == 1 && set.count() == 1
            ? set.curve().points().stream()
                .map(point -> new CurvePoint(point.flowM3PerS(), point.headM()))
                .toList()
            : List.of();
    return new PumpCurveSeries(
        pumpName(pump), PumpTrace.published(set), beyond.size() > 1 ? beyond : List.of(), sheet);
  }

  private String pumpName(Pump pump) {
    PumpSet set = pump.set();
    String name = pump.model();
    if (set.count() > 1) {
      boolean series = set.arrangement() == PumpSet.Arrangement.SERIES;
      name = set.count() + " × " + name + (series ? " in series" : " in parallel");
    }
    return set.speed() == 1 ? name : name + " at " + units.share(set.speed());
  }

  private List<OperatingPoint> operatingPoints() {
    List<OperatingPoint> points = new ArrayList<>();
    OptionalDouble flow = curves.operatingFlowM3PerS();
    if (flow.isPresent()) {
      points.add(operatingPoint(curves.pump().orElseThrow().set(), flow.getAsDouble()));
    }
    curves.duty().ifPresent(duty -> addDuty(duty, points));
    return points;
  }

  private OperatingPoint operatingPoint(PumpSet set, double flow) {
    double head = set.headAt(flow);
    List<String> lines = new ArrayList<>();
    lines.add(
        flow == 0
            ? "moves no water, shut-off " + units.head(head)
            : units.flow(flow) + " at " + units.head(head));
    OptionalDouble power = set.powerAt(flow);
    if (power.isPresent()) {
      lines.add(units.power(power.getAsDouble()));
    }
    return new OperatingPoint(Math.max(0, flow), head, lines);
  }

  private void addDuty(Duty duty, List<OperatingPoint> points) {
    duty.asTheyStand()
        .ifPresent(
            stand ->
                points.add(
                    new OperatingPoint(
                        stand.flowM3PerS(),
                        stand.headM(),
                        List.of(
                            "targets, valves as they stand",
                            units.flow(stand.flowM3PerS()) + " at " + units.head(stand.headM())))));
    boolean apart =
        duty.throttled().isPresent()
            && duty.asTheyStand()
                .map(d -> d.flowM3PerS() > 1.02 * duty.throttled().get().flowM3PerS())
                .orElse(true);
    if (apart) {
      Duty.Throttled throttled = duty.throttled().orElseThrow();
      points.add(
          new OperatingPoint(
              throttled.flowM3PerS(),
              throttled.headM(),
              Valves.THROTTLED,
              List.of(
                  "targets, others throttled",
                  units.flow(throttled.flowM3PerS()) + " at " + units.head(throttled.headM()))));
    }
  }

  private Optional<FlowMark> flowLimit() {
    OptionalDouble greatest = curves.system().greatestFlowM3PerS();
    return greatest.isPresent() && greatest.getAsDouble() > 0
        ? Optional.of(
            new FlowMark(
                greatest.getAsDouble(),
                "no more than " + units.flow(greatest.getAsDouble()) + " comes in"))
        : Optional.empty();
  }
}
