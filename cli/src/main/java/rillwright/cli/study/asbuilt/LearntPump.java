package rillwright.cli.study.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.pump.UnknownPump;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.study.diagnosis.reading.When;
import rillwright.solver.study.uncertainty.posterior.Posterior;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/**
 * The curve of a pump that had no data sheet.
 *
 * @param name of the pump
 * @param points of its curve, from no flow on
 * @param finely the same for a picture, as far as any likely curve goes
 * @param spots what was read of it, in the order of the file
 */
public record LearntPump(String name, List<Point> points, List<Point> finely, List<Spot> spots) {
  private static final int POINTS = 10;
  private static final int FINE_POINTS = 60;

  public LearntPump {
    points = List.copyOf(points);
    finely = List.copyOf(finely);
    spots = List.copyOf(spots);
  }

  /**
   * A reading of its head beside its flow, of one pump at full speed.
   *
   * @param when the state of the job
   * @param flowWithinM3PerS half the width of the 95 % interval of the error of reading it alone,
   *     m³/s; 0 where it is not read
   * @param headWithinM the same of the gauge that shows the head, m
   * @param isFlowRead whether the flow was read too or nothing flows; else it is as expected
   */
  public record Spot(
      When when,
      double flowM3PerS,
      double flowWithinM3PerS,
      double headM,
      double headWithinM,
      boolean isFlowRead) {}

  /** Its head at a flow, m³/s and m. */
  public record Point(double flowM3PerS, Band headM) {}

  /**
   * The unknown pumps of a project.
   *
   * @param addresses of the unknowns, in the order of the posterior
   */
  static List<LearntPump> listIn(
      Project project, List<String> addresses, Posterior after, PumpReadings readings) {
    return project.sheets().entrySet().stream()
        .flatMap(
            sheet -> {
              List<Integer> numbers =
                  UnknownPump.steps(sheet.getKey()).stream()
                      .map(steps -> addresses.indexOf(new Address(steps).text()))
                      .toList();
              return numbers.stream().allMatch(number -> number < 0)
                  ? Stream.<LearntPump>empty()
                  : Stream.of(
                      of(sheet.getKey(), sheet.getValue().curve(), numbers, after, readings));
            })
        .toList();
  }

  private static LearntPump of(
      String name,
      PumpCurve middle,
      List<Integer> numbers,
      Posterior after,
      PumpReadings readings) {
    PumpPoint last = middle.points().get(middle.points().size() - 1);
    double shutOff = middle.points().get(0).headM();
    PumpPoint half = middle.points().get(middle.points().size() / 2);
    double bend =
        Math.log(1 - half.headM() / shutOff) / Math.log(half.flowM3PerS() / last.flowM3PerS());
    double[] known = {shutOff, last.flowM3PerS(), bend};
    Band runsOut = after.band(draw -> value(draw, numbers.get(1), known[1]));
    ToDoubleBiFunction<Posterior.Draw, Double> headM =
        (draw, flow) ->
            UnknownPump.headM(
                value(draw, numbers.get(0), known[0]),
                value(draw, numbers.get(1), known[1]),
                value(draw, numbers.get(2), known[2]),
                flow);
    return new LearntPump(
        name,
        points(POINTS, runsOut.p50(), headM, after),
        points(FINE_POINTS, runsOut.p95(), headM, after),
        readings.of(name, headM));
  }

  private static List<Point> points(
      int count,
      double toM3PerS,
      ToDoubleBiFunction<Posterior.Draw, Double> headM,
      Posterior after) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      double flow = i * toM3PerS / count;
      points.add(new Point(flow, after.band(draw -> headM.applyAsDouble(draw, flow))));
    }
    return points;
  }

  private static double value(Posterior.Draw draw, int number, double known) {
    return number < 0 ? known : draw.values().get(number);
  }

  /**
   * A data sheet with the facts of another and the middle of what was learnt.
   *
   * @param remark where it comes from
   */
  public DataSheet sheet(DataSheet like, String remark) {
    List<PumpPoint> middle =
        points.stream()
            .map(
                point ->
                    new PumpPoint(
                        point.flowM3PerS(),
                        point.headM().p50(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()))
            .toList();
    return new DataSheet(
        name,
        new PumpCurve(middle),
        like.facts().withRemark(remark),
        List.of(),
        false,
        like.units());
  }
}
