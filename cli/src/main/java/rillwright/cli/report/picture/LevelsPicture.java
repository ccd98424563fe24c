package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.curves.chart.content.Panel;
import rillwright.curves.chart.content.PanelChart;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Basin;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.time.TimeCourse;
import rillwright.solver.stream.time.TimeCourse.Moment;

/** The picture of levels and flows from switch-on to rest after switch-off. */
public final class LevelsPicture {
  /** Lines farther from the water than this, in its own range, would make the picture small. */
  private static final double FAR = 8;

  private static final double SECONDS_PER_MINUTE = 60;

  /** The tail after the stop is drawn as long as the running time, or this long, s. */
  private static final double LONGEST_TAIL_S = 1800;

  private final StreamAnswer answer;
  private final TimeCourse course;
  private final List<Moment> moments;
  private final Unit depth;
  private final Unit flow;

  private LevelsPicture(StreamAnswer answer) {
    this.answer = answer;
    this.course = answer.course().orElseThrow();
    double tail = Math.max(course.stopsAtS(), LONGEST_TAIL_S);
    this.moments =
        course.moments().stream()
            .filter(moment -> moment.timeS() <= course.stopsAtS() + tail)
            .toList();
    this.depth = Shown.of(answer).depthUnit();
    this.flow = Shown.of(answer).flowUnit();
  }

  /** What is to be drawn. */
  public static PanelChart of(StreamAnswer answer) {
    return new LevelsPicture(answer).chart();
  }

  private PanelChart chart() {
    List<Panel> panels = new ArrayList<>();
    Panel.Mark stop = stop("pump off");
    List<Panel.Curve> levels = curves(m -> named(m.levelM()), depth);
    panels.add(
        new Panel(
            "", "Level, " + depth.symbol(), levels, levelMarks(levels), List.of(stop), List.of()));
    below(
        panels, "Pools, above their crests, " + depth.symbol(), curves(m -> m.poolHeadM(), depth));
    below(panels, "Flow, " + flow.symbol(), curves(LevelsPicture::flows, flow));
    String changed =
        answer.changes().isEmpty() ? "" : " Changed: " + String.join("; ", answer.changes()) + ".";
    return new PanelChart(
        answer.title(),
        "Levels and flows from switch-on until steady and after switch-off, nothing topped up."
            + changed,
        1,
        panels);
  }

  /** Where the pump stops; where the course ends if it is given up before. */
  private Panel.Mark stop(String words) {
    return new Panel.Mark(
        course.stopsAtS() / SECONDS_PER_MINUTE,
        course.reachesSteady() || words.isEmpty() ? words : "given up");
  }

  /** Another panel below; the time stands under the last. */
  private void below(List<Panel> panels, String title, List<Panel.Curve> curves) {
    if (!curves.isEmpty()) {
      Panel.Mark stop = stop("");
      panels.add(
          new Panel(
              title.startsWith("Flow") ? "Time since the start, minutes" : "",
              title,
              curves,
              List.of(),
              List.of(stop),
              List.of()));
    }
  }

  private static Map<String, Double> flows(Moment moment) {
    Map<String, Double> flows = new LinkedHashMap<>();
    moment.flowM3PerS().forEach((fall, value) -> flows.put("over " + fall.value(), value));
    moment
        .returnFlowM3PerS()
        .forEach((stream, value) -> flows.put("return flow, stream " + stream, value));
    return flows;
  }

  private static Map<String, Double> named(Map<PointName, Double> byPoint) {
    Map<String, Double> named = new LinkedHashMap<>();
    byPoint.forEach((point, value) -> named.put(point.value(), value));
    return named;
  }

  private List<Panel.Curve> curves(Function<Moment, Map<String, Double>> values, Unit unit) {
    Map<String, List<Panel.Spot>> spots = new LinkedHashMap<>();
    for (Moment moment : moments) {
      values
          .apply(moment)
          .forEach(
              (name, value) ->
                  spots
                      .computeIfAbsent(name, key -> new ArrayList<>())
                      .add(
                          new Panel.Spot(moment.timeS() / SECONDS_PER_MINUTE, unit.fromSi(value))));
    }
    return spots.entrySet().stream()
        .filter(curve -> curve.getValue().size() > 1)
        .map(curve -> new Panel.Curve(curve.getKey(), curve.getValue()))
        .toList();
  }

  /** Sill, overflow, ground and liner's edge, as far as they are near the water. */
  private List<Panel.Mark> levelMarks(List<Panel.Curve> levels) {
    double[] drawn =
        levels.stream()
            .flatMap(curve -> curve.points().stream())
            .mapToDouble(Panel.Spot::up)
            .sorted()
            .toArray();
    double range = Math.max(drawn[drawn.length - 1] - drawn[0], 1e-9);
    List<Panel.Mark> marks = new ArrayList<>();
    for (LevelBudget budget : answer.budget().basins()) {
      Basin basin = budget.basin();
      String of = answer.budget().basins().size() > 1 ? " of " + basin.name().value() : "";
      for (Skimmer skimmer : answer.budget().running().state().network().skimmersOf(basin.name())) {
        mark(marks, skimmer.sillM(), "skimmer's sill" + of);
      }
      budget.overflowM().ifPresent(level -> mark(marks, level, "overflow" + of));
      basin.gradeM().ifPresent(level -> mark(marks, level, "grade" + of));
      basin.linerEdgeM().ifPresent(level -> mark(marks, level, "liner's edge" + of));
    }
    return marks.stream()
        .filter(
            mark ->
                mark.at() < drawn[drawn.length - 1] + FAR * range
                    && mark.at() > drawn[0] - FAR * range)
        .toList();
  }

  private void mark(List<Panel.Mark> marks, double levelM, String label) {
    marks.add(new Panel.Mark(depth.fromSi(levelM), label));
  }
}
