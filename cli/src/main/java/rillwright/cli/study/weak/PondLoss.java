package rillwright.cli.study.weak;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Basin;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * What a pond loses besides what evaporates, by how fast it falls: with the pump off what leaks out
 * of the pond itself, by what it falls faster while it runs what is lost on the way of the water.
 *
 * @param pond its name
 * @param evaporationMPerS how fast it falls by evaporation, m/s
 * @param running what was read while it runs
 * @param off what was read with the pump off
 */
public record PondLoss(
    PointName pond, double evaporationMPerS, Optional<Fall> running, Optional<Fall> off) {

  /**
   * A rate with half the width of its 95 % interval.
   *
   * @param mPerS how fast it falls, m/s
   * @param withinMPerS likewise
   * @param areaM2 of the pond
   */
  public record Fall(double mPerS, double withinMPerS, double areaM2) {
    /** How much water that is, m³/s. */
    public double m3PerS() {
      return areaM2 * mPerS;
    }

    /** Half the width of its 95 % interval, m³/s. */
    public double withinM3PerS() {
      return areaM2 * withinMPerS;
    }

    /** Whether it is more than its error. */
    public boolean isMore() {
      return mPerS > withinMPerS;
    }
  }

  /** What the readings say; empty if no fall of a pond was read that can be compared. */
  public static Optional<PondLoss> of(Scope scope, List<Reading> readings) {
    for (Basin basin : scope.job().network().points(Basin.class)) {
      Optional<Fall> running = read(basin, new When.Running(), scope, readings);
      Optional<Fall> off = read(basin, new When.PumpOff(), scope, readings);
      if (running.isPresent() || off.isPresent()) {
        double evaporation = scope.job().facts().evaporationMPerS().orElse(0);
        return Optional.of(new PondLoss(basin.name(), evaporation, running, off));
      }
    }
    return Optional.empty();
  }

  private static Optional<Fall> read(Basin basin, When when, Scope scope, List<Reading> readings) {
    Meter meter = new Meter(Meter.Kind.FALLS, basin.name().value(), when);
    double area = basin.shape().map(shape -> shape.areaM2(basin.levelM())).orElse(0.0);
    return readings.stream()
        .filter(reading -> reading.what().equals(meter) && scope.asBuilt(meter).isPresent())
        .map(
            reading ->
                new Fall(reading.value(), reading.tolerance().halfWidthAt(reading.value()), area))
        .findFirst();
  }

  /** What leaks out of the pond itself; empty if its fall with the pump off was not read. */
  public Optional<Fall> ofThePond() {
    return off.map(fall -> less(fall, evaporationMPerS, 0));
  }

  /**
   * What is lost on the way of the water; empty unless its fall was read both ways. A leak of the
   * pond itself goes on while it runs.
   */
  public Optional<Fall> onTheWay() {
    return running.flatMap(
        fall -> off.map(still -> less(fall, still.mPerS(), still.withinMPerS())));
  }

  /** What is lost on either side together; empty if its fall was not read while it runs. */
  public Optional<Fall> together() {
    return running.map(fall -> less(fall, evaporationMPerS, 0));
  }

  private static Fall less(Fall fall, double mPerS, double withinMPerS) {
    double left = Math.max(0, fall.mPerS() - mPerS);
    return new Fall(left, Math.hypot(fall.withinMPerS(), withinMPerS), fall.areaM2());
  }
}
