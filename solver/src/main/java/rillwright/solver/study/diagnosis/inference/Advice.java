package rillwright.solver.study.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.evidence.Belief;
import rillwright.solver.study.diagnosis.evidence.Information;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.inference.NextReading.Expected;
import rillwright.solver.study.diagnosis.pair.ListedPairs;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Reading;

/** What to read next, by what it is expected to tell about single causes and pairs. */
final class Advice {
  /** Fewer bits than this tell nothing apart. */
  private static final double TELLS_APART_BITS = 0.02;

  private final Scope scope;
  private final List<Cause> causes;
  private final List<Belief> beliefs;
  private final double[] probability;
  private final ListedPairs pairs;
  private final Information information;

  /**
   * Advice on some causes.
   *
   * @param causes likeliest first
   * @param beliefs of them, in the same order
   * @param probability of each, of all single causes' 1
   */
  Advice(
      Scope scope,
      List<Cause> causes,
      List<Belief> beliefs,
      double[] probability,
      ListedPairs pairs) {
    this.scope = scope;
    this.causes = List.copyOf(causes);
    this.beliefs = List.copyOf(beliefs);
    this.probability = probability.clone();
    this.pairs = pairs;
    this.information = new Information(scope);
  }

  /** The readings still to be taken, the one that tells most for its time first. */
  List<NextReading> next(List<Reading> readings) {
    Set<Measurand> taken = new HashSet<>();
    readings.forEach(reading -> taken.add(reading.what()));
    List<Belief> all = new ArrayList<>(beliefs);
    all.addAll(pairs.beliefs());
    double[] shares = Arrays.copyOf(probability, all.size());
    for (int c = 0; c < probability.length; c++) {
      shares[c] *= pairs.ofSingles();
    }
    for (int p = 0; p < pairs.beliefs().size(); p++) {
      shares[probability.length + p] = pairs.explanations().get(p).probability();
    }
    return scope.readables().stream()
        .filter(readable -> !taken.contains(readable) && isOfUse(readable, taken))
        .map(readable -> next(readable, information.bits(scope.indexOf(readable), all, shares)))
        .sorted(Comparator.comparingDouble((NextReading reading) -> -reading.bitsPerMinute()))
        .toList();
  }

  /** The flow at a fall's box is worth its time where less has been read below. */
  private static boolean isOfUse(Measurand readable, Set<Measurand> taken) {
    if (readable instanceof Meter meter && meter.kind() == Meter.Kind.BOX) {
      PointName fall = new PointName(meter.at());
      return taken.contains(new Measurands.Flow(fall, meter.when()))
          || taken.contains(new Measurands.CrestHead(fall, meter.when()));
    }
    return true;
  }

  private NextReading next(Measurand readable, double bits) {
    int index = scope.indexOf(readable);
    List<Expected> predicted = new ArrayList<>();
    for (int c = 0; c < causes.size(); c++) {
      predicted.add(new Expected(causes.get(c), beliefs.get(c).mean(index)));
    }
    return new NextReading(
        readable,
        bits,
        predicted,
        pairs.beliefs().stream().map(belief -> belief.mean(index)).toList());
  }

  /** The reading that tells the first causes apart best; empty if none does. */
  Optional<NextReading> separating(List<NextReading> next, int first) {
    double[] shares = Arrays.copyOf(probability, first);
    NextReading best = null;
    double most = TELLS_APART_BITS;
    for (NextReading reading : next) {
      double bits =
          information.bits(scope.indexOf(reading.what()), beliefs.subList(0, first), shares);
      if (bits > most) {
        most = bits;
        best =
            new NextReading(
                reading.what(), bits, reading.predicted().subList(0, first), reading.byPairs());
      }
    }
    return Optional.ofNullable(best);
  }
}
