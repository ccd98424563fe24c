package rillwright.solver.study.diagnosis.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import rillwright.solver.study.diagnosis.cause.PondFall;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;

/** How likely readings are where everything is predicted. */
public final class Likelihood {
  /** How likely a reading is, as a share of what is likely, where there is nothing to read. */
  private static final double LOG_DENSITY_OF_NOTHING_TO_READ = StudentT.logDensity(8);

  /** Of what nothing predicts: seen or not, both alike. */
  private static final double UNKNOWN = 0.5;

  /** A pond leaks itself, whatever else weakens a fall; common practice, no source. */
  private static final double LEAKS_TOO = 0.05;

  private final Scope scope;
  private final List<Reading> readings;
  private final int[] indices;

  /** Those of how fast a pond falls. */
  private final int[] falls;

  public Likelihood(Scope scope, List<Reading> readings) {
    this.scope = scope;
    this.readings = List.copyOf(readings);
    this.indices = readings.stream().mapToInt(reading -> scope.indexOf(reading.what())).toArray();
    this.falls =
        IntStream.range(0, readings.size())
            .filter(r -> PondFall.isReadIn(readings.get(r).what()))
            .toArray();
  }

  /** Natural logarithm of the density of all readings, by what everything would read. */
  public double log(double[] predicted) {
    double log = 0;
    for (int r = 0; r < readings.size(); r++) {
      log += PondFall.isReadIn(readings.get(r).what()) ? 0 : log(r, predicted[index(r)]);
    }
    return falls.length == 0 ? log : log + Math.log(densityOfFalls(predicted));
  }

  /** As predicted, or the pond leaks too, as fast while it runs as with the pump off. */
  private double densityOfFalls(double[] predicted) {
    double density = (1 - LEAKS_TOO) * densityOfFalls(predicted, 0);
    for (PondFall rate : PondFall.USUAL) {
      density += LEAKS_TOO * rate.weight() * densityOfFalls(predicted, rate.mPerS());
    }
    return density;
  }

  private double densityOfFalls(double[] predicted, double faster) {
    double log = 0;
    for (int r : falls) {
      log += log(r, predicted[index(r)] + faster);
    }
    return Math.exp(log);
  }

  /** The same of one reading. */
  public double log(int reading, double value) {
    if (readings.get(reading).what() instanceof Sight) {
      double amiss = Double.isNaN(value) ? UNKNOWN : value;
      return Math.log(readings.get(reading).value() > UNKNOWN ? amiss : 1 - amiss);
    }
    double deviation = deviation(reading, value);
    return (Double.isNaN(value)
            ? LOG_DENSITY_OF_NOTHING_TO_READ
            : StudentT.logDensity((readings.get(reading).value() - value) / deviation))
        - Math.log(deviation);
  }

  /** Standard deviation of a reading about a value; about itself where there is nothing to read. */
  public double deviation(int reading, double value) {
    Reading read = readings.get(reading);
    double about = Double.isNaN(value) ? read.value() : value;
    return scope.deviation(index(reading), about, read.tolerance());
  }

  /** By how many deviations a reading is off a value; 8 where there is nothing to read. */
  public double misfit(int reading, double value) {
    return Double.isNaN(value)
        ? 8
        : (readings.get(reading).value() - value) / deviation(reading, value);
  }

  public int index(int reading) {
    return indices[reading];
  }

  /** Whether every reading may well show what is predicted. */
  public boolean fits(double[] predicted) {
    for (int r = 0; r < readings.size(); r++) {
      double value = predicted[index(r)];
      if (Double.isNaN(value) || !scope.fits(readings.get(r), value)) {
        return false;
      }
    }
    return true;
  }

  public List<Reading> readings() {
    return readings;
  }

  public int count() {
    return readings.size();
  }

  public double value(int reading) {
    return readings.get(reading).value();
  }

  /** Probabilities by the logarithms of weights. */
  public static double[] normalised(double[] logWeight) {
    double highest = Arrays.stream(logWeight).max().orElse(0);
    double[] shares = Arrays.stream(logWeight).map(log -> Math.exp(log - highest)).toArray();
    double sum = Arrays.stream(shares).sum();
    return Arrays.stream(shares).map(share -> share / sum).toArray();
  }
}
