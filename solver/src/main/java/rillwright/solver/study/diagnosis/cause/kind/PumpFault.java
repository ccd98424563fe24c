package rillwright.solver.study.diagnosis.cause.kind;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.network.Pump;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Look;

/** A cause that changes what a running pump gives. */
record PumpFault(
    String name,
    String what,
    SizeRange range,
    double weight,
    BiPredicate<Pump, AsBuilt> may,
    BiFunction<Pump, Double, Pump> change)
    implements CauseKind {
  /** Above 0.1, which turning backwards takes off. */
  private static final double LEAST = 0.12;

  private static final double GREATEST = 1.5;
  private static final String AIR = "air in the pump";

  static PumpFault worn() {
    return new PumpFault(
        "pump worn",
        "share of its head left",
        SizeRange.even(0.4, 0.98),
        0.06,
        PumpFault::any,
        (pump, s) -> scaled(pump, 1, s, 1));
  }

  static PumpFault slow() {
    return new PumpFault(
        "pump slow",
        "share of its speed left",
        SizeRange.even(0.5, 0.98),
        0.04,
        PumpFault::any,
        (pump, s) -> pump.atSpeed(s * pump.set().speed()));
  }

  private static boolean any(Pump pump, AsBuilt job) {
    return true;
  }

  /** Only where its sheet says that it has three phases: others turn one way. */
  static PumpFault backwards() {
    return new PumpFault(
        "pump turning backwards",
        "share of its head left; its flow falls a tenth further, its power to 80 %",
        SizeRange.even(0.45, 0.7),
        0.01,
        (pump, job) -> job.facts().isThreePhase(pump),
        (pump, s) -> scaled(pump, s - 0.1, s, 0.8));
  }

  static PumpFault air() {
    return new PumpFault(
        AIR,
        "share of its head left; its power falls 0.6 times as far",
        SizeRange.even(0.5, 0.97),
        0.05,
        PumpFault::any,
        (pump, s) -> scaled(pump, 1, s, 0.4 + 0.6 * s));
  }

  private static Pump scaled(Pump pump, double flow, double head, double power) {
    List<PumpPoint> points =
        pump.set().curve().points().stream()
            .map(
                point ->
                    new PumpPoint(
                        flow * point.flowM3PerS(),
                        head * point.headM(),
                        point.powerW().isPresent()
                            ? OptionalDouble.of(power * point.powerW().getAsDouble())
                            : OptionalDouble.empty()))
            .toList();
    return pump.withCurve(new PumpCurve(points));
  }

  @Override
  public Quantity quantity() {
    return new Quantity(what, "1", LEAST, GREATEST);
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(range);
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    return Places.ofParts(job.network(), Places::isRunningPump).stream()
        .filter(place -> may.test((Pump) Places.part(job.network(), place), job))
        .map(
            place ->
                new Site(
                    CauseId.at(name, place),
                    (size, altered) -> {
                      if (name.equals(AIR)) {
                        String water = job.network().line(place.line()).from().value();
                        altered.show(Look.CHAMBER, water, 1 - size);
                      }
                      altered.changePart(place, Pump.class, pump -> change.apply(pump, size));
                    }))
        .toList();
  }
}
