package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.curves.chart.content.Panel;
import rillwright.curves.chart.content.PanelChart;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.time.TimeCourse;
import rillwright.solver.stream.time.TimeCourse.Moment;

/** The picture of levels and flows from start to stop, a curve for each condition. */
public final class ConditionLevelsPicture {
  private static final int MOST_PANELS = 4;
  private static final double SECONDS_PER_MINUTE = 60;

  /** What is drawn after the longest start, s. */
  private static final double TAIL_S = 1800;

  private final Map<String, TimeCourse> courses;
  private final ShownUnits units;

  private ConditionLevelsPicture(Map<String, TimeCourse> courses, ShownUnits units) {
    this.courses = courses;
    this.units = units;
  }

  /** What is to be drawn; empty if start and stop were followed in no condition. */
  public static Optional<PanelChart> of(Cases<StreamAnswer> answer) {
    Map<String, TimeCourse> courses = new LinkedHashMap<>();
    for (Case<StreamAnswer> one : answer.cases()) {
      one.answer()
          .flatMap(StreamAnswer::course)
          .ifPresent(course -> courses.put(one.condition(), course));
    }
    return courses.isEmpty()
        ? Optional.empty()
        : Optional.of(new ConditionLevelsPicture(courses, Shown.of(answer)).chart(answer.title()));
  }

  private PanelChart chart(String title) {
    Set<PointName> waters = new LinkedHashSet<>();
    Set<PointName> falls = new LinkedHashSet<>();
    for (TimeCourse course : courses.values()) {
      waters.addAll(course.moments().get(0).levelM().keySet());
      falls.addAll(course.moments().get(0).flowM3PerS().keySet());
    }
    List<Panel> panels = new ArrayList<>();
    Unit depth = units.depthUnit();
    Unit flow = units.flowUnit();
    for (PointName water : waters) {
      panels.add(
          panel(
              "Level of " + water.value() + ", " + depth.symbol(),
              moment -> depth.fromSi(moment.levelM().get(water)),
              courses(moment -> moment.levelM().containsKey(water))));
    }
    for (PointName fall : falls) {
      panels.add(
          panel(
              "Flow over " + fall.value() + ", " + flow.symbol(),
              moment -> flow.fromSi(moment.flowM3PerS().get(fall)),
              courses(moment -> moment.flowM3PerS().containsKey(fall))));
    }
    List<Panel> drawn = panels.subList(0, Math.min(MOST_PANELS, panels.size()));
    return new PanelChart(
        title,
        "Levels and flows from switch-on until steady and after switch-off in each condition,"
            + " nothing topped up. Minutes since the start.",
        1,
        drawn);
  }

  /** The courses that tell a value: a condition may have waters that others have not. */
  private Map<String, TimeCourse> courses(Predicate<Moment> tells) {
    Map<String, TimeCourse> some = new LinkedHashMap<>(courses);
    some.values().removeIf(course -> !course.moments().stream().allMatch(tells));
    return some;
  }

  private Panel panel(String title, ToDoubleFunction<Moment> value, Map<String, TimeCourse> drawn) {
    List<Panel.Curve> curves = new ArrayList<>();
    double end =
        TAIL_S + courses.values().stream().mapToDouble(TimeCourse::stopsAtS).max().orElse(0);
    drawn.forEach(
        (condition, course) ->
            curves.add(
                new Panel.Curve(
                    condition,
                    course.moments().stream()
                        .filter(moment -> moment.timeS() <= end)
                        .map(
                            moment ->
                                new Panel.Spot(
                                    moment.timeS() / SECONDS_PER_MINUTE,
                                    value.applyAsDouble(moment)))
                        .toList())));
    return new Panel("", title, curves, List.of(), List.of(), List.of());
  }
}
