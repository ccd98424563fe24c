package rillwright.curves.chart.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.curves.chart.content.CausesChart.Band;
import rillwright.curves.chart.content.CausesChart.CauseBar;
import rillwright.curves.chart.content.OddsChart.ChanceCurve;
import rillwright.curves.chart.content.OddsChart.Share;
import rillwright.curves.chart.content.OddsChart.Target;
import rillwright.curves.chart.content.PowerSeries.PowerPoint;
import rillwright.curves.unit.Unit;

/** What cannot be drawn is refused where it is said, not where it is drawn. */
class RefusedContentTest {
  private static final CurvePoint ORIGIN = new CurvePoint(0, 0);
  private static final CurveSeries LINE =
      new CurveSeries("system", List.of(ORIGIN, new CurvePoint(1, 1)));

  static Stream<Arguments> wrong() {
    List<Double> flows = Collections.nCopies(101, 1.0);
    List<Double> broken = new ArrayList<>(flows);
    broken.set(50, Double.NaN);
    return Stream.of(
        arguments(
            "a chart's flow is NaN; it must be a finite number",
            does(() -> new CurvePoint(Double.NaN, 1))),
        arguments(
            "a chart's head is Infinity; it must be a finite number",
            does(() -> new CurvePoint(1, Double.POSITIVE_INFINITY))),
        arguments(
            "a curve's flow is -1.0; it must be 0 or more", does(() -> new CurvePoint(-1, 1))),
        arguments(
            "curve \"a\" needs two points or more",
            does(() -> new CurveSeries("a", List.of(ORIGIN)))),
        arguments(
            "curve \"b\" needs two points or more",
            does(() -> new PumpCurveSeries("b", List.of(ORIGIN), List.of(), List.of()))),
        arguments(
            "curve \"c\" needs two points or more",
            does(() -> new PowerSeries("c", List.of(new PowerPoint(0, 1))))),
        arguments(
            "curve \"d\" needs two points or more",
            does(() -> new Panel.Curve("d", List.of(new Panel.Spot(0, 1))))),
        arguments(
            "a power curve's flow and power must be 0 or more", does(() -> new PowerPoint(0, -1))),
        arguments(
            "a flow limit is 0.0; it must be above 0", does(() -> new FlowMark(0, "the most"))),
        arguments(
            "a chart's head is NaN; it must be a finite number",
            does(() -> new HeadMark(Double.NaN, "lift"))),
        arguments(
            "an operating point's flow is -1.0; it must be 0 or more",
            does(() -> new OperatingPoint(-1, 1, List.of()))),
        arguments(
            "a chart's axes are ft and ft; they must be a flow and a length",
            does(() -> chart(Unit.FOOT, Unit.FOOT, LINE))),
        arguments(
            "a chart's axes are gph and W; they must be a flow and a length",
            does(() -> chart(Unit.GALLON_PER_HOUR, Unit.WATT, LINE))),
        arguments("a chart needs a curve", does(() -> chart(Unit.GALLON_PER_HOUR, Unit.FOOT))),
        arguments(
            "the axis of odds is ft",
            does(() -> new OddsChart("", "", Unit.FOOT, List.of(chances(flows)), List.of()))),
        arguments(
            "a chart of odds needs a fall",
            does(() -> new OddsChart("", "", Unit.LITRE_PER_SECOND, List.of(), List.of()))),
        arguments("100 percentiles", does(() -> chances(flows.subList(0, 100)))),
        arguments("a chart's flow is NaN; it must be a finite number", does(() -> chances(broken))),
        arguments(
            "a chart's target is NaN; it must be a finite number",
            does(() -> new Target(Double.NaN, 0.5, List.of()))),
        arguments(
            "a chart's share is NaN; it must be a finite number",
            does(() -> new Share("run", Double.NaN, ""))),
        arguments(
            "a chart of causes needs a cause",
            does(() -> new CausesChart("", "", List.of(), List.of()))),
        arguments(
            "a chart's probability is NaN; it must be a finite number",
            does(() -> new CauseBar("A", "clogged", Double.NaN, ""))),
        arguments(
            "a chart's interval is Infinity; it must be a finite number",
            does(() -> new Band(1, Double.POSITIVE_INFINITY, ""))),
        arguments(
            "a panel needs a curve",
            does(() -> new Panel("", "", List.of(), List.of(), List.of(), List.of()))),
        arguments(
            "a chart's mark is NaN; it must be a finite number",
            does(() -> new Panel.Mark(Double.NaN, ""))),
        arguments(
            "a chart's height is NaN; it must be a finite number",
            does(() -> new Panel.Spot(0, Double.NaN))),
        arguments(
            "a chart needs a panel and a column",
            does(() -> new PanelChart("", "", 1, List.of()))));
  }

  private static Executable does(Executable construction) {
    return construction;
  }

  private static ChanceCurve chances(List<Double> flows) {
    return new ChanceCurve("fall", flows, Optional.empty());
  }

  private static OperatingChart chart(Unit flow, Unit head, CurveSeries... systems) {
    return new OperatingChart(
        "",
        "",
        flow,
        head,
        List.of(systems),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrong")
  void isRefusedWithASentence(String message, Executable construction) {
    Throwable refusal = assertThrows(IllegalArgumentException.class, construction);
    assertEquals(message, refusal.getMessage());
  }

  @Test
  void listsAreCopiedSoThatNobodyChangesThemLater() {
    List<CurvePoint> points = new ArrayList<>(List.of(ORIGIN, new CurvePoint(1, 1)));
    CurveSeries series = new CurveSeries("a", points);
    points.clear();
    assertEquals(2, series.points().size());
  }

  @Test
  void curvesOfOneNameAreNamedOnce() {
    Panel one = panel("pond", "chamber");
    Panel other = panel("chamber", "stream");
    assertEquals(
        List.of("pond", "chamber", "stream"),
        new PanelChart("", "", 2, List.of(one, other)).names());
  }

  private static Panel panel(String... names) {
    List<Panel.Curve> curves = new ArrayList<>();
    for (String name : names) {
      curves.add(new Panel.Curve(name, List.of(new Panel.Spot(0, 0), new Panel.Spot(1, 1))));
    }
    return new Panel("time, min", "level, in", curves, List.of(), List.of(), List.of());
  }
}
