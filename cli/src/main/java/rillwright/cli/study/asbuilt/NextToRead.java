package rillwright.cli.study.asbuilt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Narrowing;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.uncertainty.posterior.Posterior;

/**
 * Finds what would narrow the flows most: how much of the spread of a flow goes with that of a
 * reading, its error counted in (the share of variance that a straight line through both explains).
 *
 * @param ways falls and outlets
 * @param after what is known now
 */
record NextToRead(Scope scope, DrawnJob model, List<PointName> ways, Posterior after) {
  private static final int DRAWS = 100;
  private static final int MOST = 5;

  /** What leaves more than this of the bands is not worth the time. */
  private static final double WORTH_IT = 0.95;

  /** A spread of less than this share of a flow is none. */
  private static final double NO_SPREAD = 1e-6;

  List<Narrowing> afterThose(List<Reading> taken) {
    List<Measurand> known = taken.stream().map(Reading::what).toList();
    List<Measurand> open =
        scope.readables().stream()
            .filter(what -> !known.contains(what) && Telling.isOf(what, scope.job().network()))
            .filter(what -> !isFlowOnceMore(what))
            .toList();
    DrawnJob watched = model.reading(open);
    List<double[]> outcomes =
        after.evenly(DRAWS).parallelStream()
            .map(draw -> draw.values().stream().mapToDouble(it -> it).toArray())
            .map(watched::with)
            .flatMap(Optional::stream)
            .toList();
    List<Narrowing> found = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      found.add(narrowing(open.get(i), column(outcomes, i), outcomes, open.size()));
    }
    return found.stream()
        .filter(it -> it.left().values().stream().anyMatch(left -> left < WORTH_IT))
        .sorted(Comparator.comparingDouble(Narrowing::leftInAll))
        .limit(MOST)
        .toList();
  }

  private Narrowing narrowing(
      Measurand what, double[] would, List<double[]> outcomes, int firstFlow) {
    Map<PointName, Double> left = new LinkedHashMap<>();
    for (int fall = 0; fall < ways.size(); fall++) {
      double[] flows = column(outcomes, firstFlow + fall);
      left.put(ways.get(fall), left(what, would, flows));
    }
    return new Narrowing(what, left);
  }

  private double left(Measurand what, double[] would, double[] flows) {
    double mean = mean(would);
    double flow = mean(flows);
    double spread = covariance(flows, flows);
    boolean tells = !Double.isNaN(mean) && spread > Math.pow(NO_SPREAD * flow, 2);
    if (!tells) {
      return 1;
    }
    double error = error(what, would, mean);
    double together = covariance(would, flows);
    double explained = together * together / ((covariance(would, would) + error * error) * spread);
    return Math.sqrt(Math.max(0, 1 - explained));
  }

  private double error(Measurand what, double[] would, double mean) {
    return what instanceof Sight
        ? Math.sqrt(mean(Arrays.stream(would).map(chance -> chance * (1 - chance)).toArray()))
        : AsbuiltRequest.deviationOf(what, what.usualTolerance(), scope).applyAsDouble(mean);
  }

  private static double[] column(List<double[]> rows, int column) {
    return rows.stream().mapToDouble(row -> row[column]).toArray();
  }

  private static double mean(double[] values) {
    return IntStream.range(0, values.length).mapToDouble(i -> values[i]).average().orElse(0);
  }

  private static double covariance(double[] one, double[] other) {
    double first = mean(one);
    double second = mean(other);
    return IntStream.range(0, one.length)
        .mapToDouble(i -> (one[i] - first) * (other[i] - second))
        .average()
        .orElse(0);
  }

  /** With nothing lost on the way a fall's box gets what the fall gives. */
  private static boolean isFlowOnceMore(Measurand what) {
    return what instanceof Meter meter && meter.kind() == Meter.Kind.BOX;
  }
}
