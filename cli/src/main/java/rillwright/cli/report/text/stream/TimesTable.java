package rillwright.cli.report.text.stream;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Decimals;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.time.TimeCourse;
import rillwright.solver.stream.time.TimeCourse.Moment;

/** Levels and flows from switch-on to rest after switch-off, at times that grow apart. */
final class TimesTable {
  private static final double SECONDS_PER_MINUTE = 60;

  /** Minutes after switch-on and after switch-off. */
  private static final int[] MINUTES = {1, 2, 5, 10, 20, 45, 90, 180};

  private final TimeCourse course;
  private final ShownUnits units;
  private final String last;
  private final double greatest;

  /** A table; its last row with the pumps on says whether levels have become steady. */
  TimesTable(TimeCourse course, ShownUnits units, boolean becomesSteady) {
    this.course = course;
    this.units = units;
    this.last = becomesSteady ? ", steady" : ", moving";
    this.greatest =
        course.moments().stream()
            .flatMap(
                it ->
                    Stream.of(it.flowM3PerS(), it.returnFlowM3PerS())
                        .flatMap(flows -> flows.values().stream()))
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(0);
  }

  void print(PageBuilder page) {
    Moment start = course.moments().get(0);
    TableBuilder table = new TableBuilder("START AND STOP");
    for (PointName point : start.levelM().keySet()) {
      table.column(point.value(), Side.RIGHT);
    }
    for (PointName fall : start.flowM3PerS().keySet()) {
      table.column("over " + fall.value(), Side.RIGHT);
    }
    for (String stream : start.returnFlowM3PerS().keySet()) {
      table.column("return flow, " + stream, Side.RIGHT);
    }
    for (Moment moment : shown()) {
      table.row(when(moment), cells(moment, start));
    }
    page.table(table);
  }

  private Set<Moment> shown() {
    Set<Moment> shown = new LinkedHashSet<>();
    shown.add(course.moments().get(0));
    for (int minutes : MINUTES) {
      double time = minutes * SECONDS_PER_MINUTE;
      if (time < course.stopsAtS()) {
        shown.add(first(time));
      }
    }
    shown.add(course.steady());
    for (int minutes : MINUTES) {
      double time = course.stopsAtS() + minutes * SECONDS_PER_MINUTE;
      if (time < course.last().timeS()) {
        shown.add(first(time));
      }
    }
    shown.add(course.last());
    return shown;
  }

  private Moment first(double timeS) {
    return course.moments().stream()
        .filter(moment -> moment.timeS() >= timeS)
        .findFirst()
        .orElseGet(course::last);
  }

  private String when(Moment moment) {
    double since = moment.pumping() ? moment.timeS() : moment.timeS() - course.stopsAtS();
    if (since == 0) {
      return "pump on";
    }
    boolean few = since < SECONDS_PER_MINUTE && moment.equals(course.last());
    String minutes =
        few
            ? String.format(Locale.ROOT, "%.1f s", since)
            : String.format(Locale.ROOT, "%.0f min", since / SECONDS_PER_MINUTE);
    if (course.reachesSteady() && moment.equals(course.steady())) {
      return minutes + last;
    }
    return moment.pumping() ? minutes : "off, " + minutes;
  }

  private List<Cell> cells(Moment moment, Moment start) {
    List<Cell> cells = new ArrayList<>();
    for (PointName point : start.levelM().keySet()) {
      cells.add(Cell.of(units.level(moment.levelM().get(point))));
    }
    for (PointName fall : start.flowM3PerS().keySet()) {
      cells.add(Cell.of(flow(moment.flowM3PerS().getOrDefault(fall, 0.0))));
    }
    for (String stream : start.returnFlowM3PerS().keySet()) {
      cells.add(Cell.of(flow(moment.returnFlowM3PerS().getOrDefault(stream, 0.0))));
    }
    return cells;
  }

  private String flow(double flowM3PerS) {
    String shown = Decimals.beside(units.flow(Math.max(0, flowM3PerS)), units.flow(greatest));
    return shown.matches("0[.0]* .*") ? "none" : shown;
  }
}
