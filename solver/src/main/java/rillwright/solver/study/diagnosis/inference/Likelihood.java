package rillwright.solver.study.diagnosis.inference;

import java.util.List;
import rillwright.solver.study.diagnosis.reading.Reading;

/** How likely readings are where everything is predicted. */
final class Likelihood {
  /** How likely a reading is, as a share of what is likely, where there is nothing to read. */
  private static final double LOG_DENSITY_OF_NOTHING_TO_READ = StudentT.logDensity(8);

  private final Scope scope;
  private final List<Reading> readings;

  Likelihood(Scope scope, List<Reading> readings) {
    this.scope = scope;
    this.readings = List.copyOf(readings);
  }

  /** Natural logarithm of the density of all readings, by what everything would read. */
  double log(double[] predicted) {
    double log = 0;
    for (int r = 0; r < readings.size(); r++) {
      log += log(r, predicted[index(r)]);
    }
    return log;
  }

  /** The same of one reading. */
  double log(int reading, double value) {
    double deviation = deviation(reading, value);
    return (Double.isNaN(value)
            ? LOG_DENSITY_OF_NOTHING_TO_READ
            : StudentT.logDensity((readings.get(reading).value() - value) / deviation))
        - Math.log(deviation);
  }

  /** Standard deviation of a reading about a value; about itself where there is nothing to read. */
  double deviation(int reading, double value) {
    Reading read = readings.get(reading);
    double about = Double.isNaN(value) ? read.value() : value;
    return scope.deviation(index(reading), about, read.tolerance());
  }

  /** By how many deviations a reading is off a value; 8 where there is nothing to read. */
  double misfit(int reading, double value) {
    return Double.isNaN(value)
        ? 8
        : (readings.get(reading).value() - value) / deviation(reading, value);
  }

  int index(int reading) {
    return scope.indexOf(readings.get(reading).what());
  }

  /** Whether every reading may well show what is predicted. */
  boolean fits(double[] predicted) {
    for (int r = 0; r < readings.size(); r++) {
      double value = predicted[index(r)];
      if (Double.isNaN(value) || !scope.fits(readings.get(r), value)) {
        return false;
      }
    }
    return true;
  }

  List<Reading> readings() {
    return readings;
  }

  int count() {
    return readings.size();
  }

  double value(int reading) {
    return readings.get(reading).value();
  }
}
