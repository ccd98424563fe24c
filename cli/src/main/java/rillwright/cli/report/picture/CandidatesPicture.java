package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.CandidateCurves;
import rillwright.cli.study.choice.CandidateCurves.InState;
import rillwright.cli.study.choice.PumpsAnswer;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.CurveSeries;
import rillwright.curves.chart.content.FlowMark;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.content.OperatingPoint.Valves;
import rillwright.curves.chart.content.PumpCurveSeries;
import rillwright.curves.trace.PumpTrace;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.RunningPoint;

/** The picture of pumps tried: their curves over the one system curve, with where each runs. */
public final class CandidatesPicture {
  private static final double ROOM = 1.08;

  private final PumpsAnswer answer;
  private final CandidateCurves curves;
  private final ShownUnits units;
  private final List<RatedTrial> drawn;

  private CandidatesPicture(PumpsAnswer answer, CandidateCurves curves) {
    this.answer = answer;
    this.curves = curves;
    this.units = Shown.of(answer);
    this.drawn = curves.best();
  }

  /** What is to be drawn. */
  public static OperatingChart of(PumpsAnswer answer, CandidateCurves curves) {
    return new CandidatesPicture(answer, curves).chart();
  }

  private OperatingChart chart() {
    SystemCurve system = curves.asItStands();
    List<CurvePoint> points = system.points();
    return new OperatingChart(
        answer.duty().title(),
        caption(),
        units.flowUnit(),
        units.headUnit(),
        systems(points),
        drawn.stream().map(rated -> series(rated.trial())).toList(),
        operatingPoints(),
        limit(system),
        StaticHeadMark.of(system, units),
        Optional.empty());
  }

  /** What the network needs as it stands and, where conditions judge, in each of them. */
  private List<CurveSeries> systems(List<CurvePoint> asItStands) {
    List<CurveSeries> systems = new ArrayList<>();
    if (asItStands.size() > 1) {
      systems.add(new CurveSeries("system curve", asItStands));
    }
    for (InState state : curves.states()) {
      List<CurvePoint> points = state.system().points();
      if (points.size() > 1 && !points.equals(asItStands)) {
        systems.add(new CurveSeries("need in " + state.condition(), points));
      }
    }
    return systems;
  }

  private String caption() {
    int left = answer.choice().ranked().size() - drawn.size();
    return "Pumps tried in line \""
        + answer.duty().place().line().value()
        + "\", best first"
        + (left > 0
            ? "; " + left + (left == 1 ? " more is not drawn" : " more are not drawn")
            : "");
  }

  private PumpCurveSeries series(PumpTrial trial) {
    double flow = trial.operating().flowM3PerS();
    List<CurvePoint> beyond =
        flow > trial.set().publishedRangeM3PerS()
            ? PumpTrace.beyond(trial.set(), ROOM * flow).stream()
                .filter(point -> point.headM() >= 0)
                .toList()
            : List.of();
    return new PumpCurveSeries(
        SetupWords.of(trial.setup(), units),
        PumpTrace.published(trial.set()),
        beyond.size() > 1 ? beyond : List.of(),
        PumpTrace.sheetPoints(trial.set()));
  }

  private List<OperatingPoint> operatingPoints() {
    List<OperatingPoint> points = new ArrayList<>();
    for (RatedTrial rated : drawn) {
      PumpTrial trial = rated.trial();
      boolean labelled = points.isEmpty() && rated.meetsTargets();
      boolean throttled = trial.verdict().throttled().isPresent();
      if (throttled) {
        points.add(
            point(trial.inUse(), Valves.THROTTLED, labelled ? label(trial, true) : List.of()));
      }
      points.add(
          point(
              trial.operating(),
              Valves.AS_THEY_STAND,
              labelled && !throttled ? label(trial, false) : List.of()));
    }
    Collections.reverse(points); // the best last, over all others
    return points;
  }

  private static OperatingPoint point(RunningPoint point, Valves valves, List<String> label) {
    return new OperatingPoint(Math.max(0, point.flowM3PerS()), point.headM(), valves, label);
  }

  /** The figures that the table tells: of a pump to be throttled those at the throttled point. */
  private List<String> label(PumpTrial trial, boolean throttled) {
    List<String> lines = new ArrayList<>();
    lines.add(SetupWords.of(trial.setup(), units) + (throttled ? ", throttled" : ""));
    RunningPoint point = trial.inUse();
    lines.add(units.flow(point.flowM3PerS()) + " at " + units.head(point.headM()));
    OptionalDouble power = point.powerW();
    if (power.isPresent()) {
      lines.add(units.power(power.getAsDouble()));
    }
    return lines;
  }

  private Optional<FlowMark> limit(SystemCurve system) {
    OptionalDouble greatest = system.greatestFlowM3PerS();
    return greatest.isPresent() && greatest.getAsDouble() > 0
        ? Optional.of(
            new FlowMark(
                greatest.getAsDouble(),
                "no more than " + units.flow(greatest.getAsDouble()) + " comes in"))
        : Optional.empty();
  }
}
