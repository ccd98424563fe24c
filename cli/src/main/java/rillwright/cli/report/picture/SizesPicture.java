package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.report.choice.SetupWords;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.PipesAnswer;
import rillwright.cli.study.choice.SizeCurves;
import rillwright.cli.study.choice.SizeCurves.OfSize;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.CurveSeries;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.content.OperatingPoint.Valves;
import rillwright.curves.chart.content.PumpCurveSeries;
import rillwright.curves.trace.PumpTrace;
import rillwright.solver.pumping.TargetHead.Governed;
import rillwright.solver.study.pipechoice.RatedPipe;
import rillwright.solver.trial.PumpSetup;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RunningPoint;

/** The picture of sizes tried: the system curve of each under the curves of their pumps. */
public final class SizesPicture {
  private final PipesAnswer answer;
  private final SizeCurves curves;
  private final ShownUnits units;
  private final SizeWords sizes;
  private final List<RatedPipe> drawn;

  private SizesPicture(PipesAnswer answer, SizeCurves curves) {
    this.answer = answer;
    this.curves = curves;
    this.units = Shown.of(answer);
    this.sizes = new SizeWords(answer.choice().ranked());
    this.drawn = curves.best();
  }

  /** What is to be drawn. */
  public static OperatingChart of(PipesAnswer answer, SizeCurves curves) {
    return new SizesPicture(answer, curves).chart();
  }

  private OperatingChart chart() {
    return new OperatingChart(
        answer.duty().title(),
        caption(),
        units.flowUnit(),
        units.headUnit(),
        systems(),
        pumps(),
        operatingPoints(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private String caption() {
    int left = answer.choice().ranked().size() - drawn.size();
    return (curves.throttled() ? "System curves" : "System curve")
        + " with each size of pipe in "
        + sizes.lines()
        + (curves.throttled() ? ", the falls held to equal shares of their targets" : "")
        + (left > 0
            ? "; " + left + (left == 1 ? " more is not drawn" : " more are not drawn")
            : "");
  }

  private List<CurveSeries> systems() {
    double tallest =
        drawn.stream()
            .mapToDouble(rated -> rated.pump().trial().set().headAt(0))
            .max()
            .orElseThrow();
    List<CurveSeries> systems = new ArrayList<>();
    for (OfSize curve : narrowestFirst()) {
      List<CurvePoint> points = upTo(1.5 * tallest, curve.system().points());
      if (points.size() > 1) {
        systems.add(new CurveSeries(sizes.cell(curve.rated().option()), points));
      }
    }
    return systems;
  }

  private List<OfSize> narrowestFirst() {
    return curves.curves().stream()
        .sorted(Comparator.comparingDouble(curve -> curve.rated().option().sumOfBoresM()))
        .toList();
  }

  /** A curve as far as it stays in the picture: a narrow pipe's would flatten all others. */
  private static List<CurvePoint> upTo(double headM, List<CurvePoint> points) {
    List<CurvePoint> kept = new ArrayList<>();
    for (CurvePoint point : points) {
      if (point.headM() > headM && kept.size() > 1) {
        break;
      }
      kept.add(point);
    }
    return kept;
  }

  private List<PumpCurveSeries> pumps() {
    Map<PumpSetup, PumpTrial> distinct = new LinkedHashMap<>();
    for (RatedPipe rated : drawn) {
      PumpTrial trial = rated.pump().trial();
      distinct.putIfAbsent(trial.setup(), trial);
    }
    List<PumpCurveSeries> series = new ArrayList<>();
    for (PumpTrial trial : distinct.values()) {
      series.add(
          new PumpCurveSeries(
              SetupWords.of(trial.setup(), units),
              PumpTrace.published(trial.set()),
              List.of(),
              PumpTrace.sheetPoints(trial.set())));
    }
    return series;
  }

  private List<OperatingPoint> operatingPoints() {
    List<OperatingPoint> points = new ArrayList<>();
    for (RatedPipe rated : drawn) {
      PumpTrial trial = rated.pump().trial();
      boolean labelled = points.isEmpty() && rated.meetsTargets();
      boolean throttled = rated.isThrottled();
      if (labelled) {
        Valves valves = throttled ? Valves.THROTTLED : Valves.AS_THEY_STAND;
        points.add(point(trial.inUse(), valves, label(rated, throttled)));
      }
      if (curves.throttled()) {
        asked(rated).ifPresent(points::add);
      } else if (!labelled || throttled) {
        points.add(point(trial.operating(), Valves.AS_THEY_STAND, List.of()));
      }
    }
    Collections.reverse(points); // the best last, over all others
    return points;
  }

  private static OperatingPoint point(RunningPoint point, Valves valves, List<String> label) {
    return new OperatingPoint(Math.max(0, point.flowM3PerS()), point.headM(), valves, label);
  }

  /** What a size asks of the pump with every fall at its target; empty if it cannot be had. */
  private static Optional<OperatingPoint> asked(RatedPipe rated) {
    return rated
        .demand()
        .throttled()
        .map(Governed::needed)
        .map(it -> new OperatingPoint(it.flowM3PerS(), it.headM(), Valves.THROTTLED, List.of()));
  }

  /** The figures that the tables tell: of a pump to be throttled those at the throttled point. */
  private List<String> label(RatedPipe rated, boolean throttled) {
    RunningPoint point = rated.pump().trial().inUse();
    return List.of(
        sizes.cell(rated.option()) + (throttled ? ", throttled" : ""),
        units.flow(point.flowM3PerS()) + " at " + units.head(point.headM()));
  }
}
