package rillwright.cli.study.asbuilt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import rillwright.cli.study.asbuilt.LearntPump.Spot;
import rillwright.solver.law.Gravity;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.When;
import rillwright.solver.study.uncertainty.posterior.Posterior;
import rillwright.solver.study.uncertainty.posterior.Posterior.Draw;

/**
 * What was read of a pump, as points beside its curve: a gauge in its line shows its head, less
 * what is expected to be lost between; the flow was read in the same state, or is as expected.
 */
record PumpReadings(Scope scope, DrawnJob model, Posterior after, List<Reading> telling) {
  private static final int DRAWS = 100;

  /** Flows that were read are the pump's if they are so much of it. */
  private static final double ALL_OF_IT = 0.9;

  /**
   * The points of the pumps of a model.
   *
   * @param headM head of one of them at full speed at its flow, m, by what a draw says of it
   */
  List<Spot> of(String pump, ToDoubleBiFunction<Draw, Double> headM) {
    Network network = scope.job().network();
    List<Spot> spots = new ArrayList<>();
    for (Placed<Pump> placed : network.placed(Pump.class)) {
      if (placed.part().model().equals(pump) && placed.part().set().speed() > 0) {
        for (Reading reading : telling) {
          if (reading.what() instanceof Measurands.GaugePressure gauge
              && isDownstream(gauge.gauge(), placed)) {
            spot(reading, placed, headM).ifPresent(spots::add);
          }
        }
      }
    }
    return spots;
  }

  private static boolean isDownstream(String gauge, Placed<Pump> pump) {
    Line line = pump.line();
    return line.placed(Gauge.class).stream()
        .anyMatch(one -> one.part().name().equals(gauge) && one.index() > pump.index());
  }

  private Optional<Spot> spot(
      Reading gauge, Placed<Pump> pump, ToDoubleBiFunction<Draw, Double> headM) {
    When when = gauge.what().when();
    List<Reading> flows = telling.stream().filter(it -> isFlow(it.what(), when)).toList();
    List<Measurand> watched = new ArrayList<>();
    watched.add(gauge.what());
    watched.add(new LineFlow(pump.line().name(), when));
    flows.forEach(flow -> watched.add(flow.what()));
    DrawnJob job = model.reading(watched);
    PumpSet set = pump.part().set();
    List<Row> rows =
        after.evenly(DRAWS).parallelStream()
            .flatMap(draw -> row(draw, job, set, flows.size(), headM).stream())
            .toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    double density = scope.job().network().water().densityKgPerM3();
    double metres = 1 / (density * Gravity.STANDARD_M_PER_S2 * set.speed() * set.speed());
    double head = mean(rows, Row::headM) + (gauge.value() - mean(rows, Row::gaugePa)) * metres;
    double within = gauge.tolerance().halfWidthAt(gauge.value()) * metres;
    double expected = mean(rows, Row::flowM3PerS);
    double read = flows.stream().mapToDouble(Reading::value).sum();
    double readExpected = mean(rows, row -> row.readM3PerS().stream().mapToDouble(it -> it).sum());
    double flowOfAll = expected / Math.max(1e-12, set.flowOfOne(1) / set.speed());
    boolean isRead = !flows.isEmpty() && readExpected >= ALL_OF_IT * flowOfAll;
    double flow = isRead ? expected * read / readExpected : expected;
    double share =
        isRead
            ? flows.stream().mapToDouble(it -> it.tolerance().halfWidthAt(it.value())).sum() / read
            : 0;
    return Optional.of(
        new Spot(when, Math.max(0, flow), share * flow, head, within, isRead || expected <= 0));
  }

  private static boolean isFlow(Measurand what, When when) {
    return what.when().equals(when) && what instanceof Measurands.Flow;
  }

  /**
   * What is expected by a draw.
   *
   * @param headM of one pump at full speed
   * @param gaugePa what the gauge shows
   * @param flowM3PerS of one pump at full speed
   * @param readM3PerS the flows that were read
   */
  private record Row(double headM, double gaugePa, double flowM3PerS, List<Double> readM3PerS) {}

  private static Optional<Row> row(
      Draw draw, DrawnJob job, PumpSet set, int flows, ToDoubleBiFunction<Draw, Double> headM) {
    double[] values = draw.values().stream().mapToDouble(it -> it).toArray();
    return job.with(values)
        .filter(outcome -> !Double.isNaN(outcome[0]))
        .map(
            outcome -> {
              double flow = set.flowOfOne(Math.max(0, outcome[1])) / set.speed();
              return new Row(
                  headM.applyAsDouble(draw, flow),
                  outcome[0],
                  flow,
                  Arrays.stream(outcome, 2, 2 + flows).boxed().toList());
            });
  }

  private static double mean(List<Row> rows, ToDoubleFunction<Row> of) {
    return rows.stream().mapToDouble(of).average().orElse(0);
  }
}
