package rillwright.solver.study.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.solver.law.Bore;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Valve;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.evidence.Hypothesis;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.evidence.SweptCause.Unnoticed;
import rillwright.solver.study.diagnosis.inference.Diagnostician.Sizes;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Tolerance;
import rillwright.solver.study.diagnosis.reading.When;
import rillwright.solver.water.Water;

/** A pond, a pump, a pipe and a fall; answers worked out apart from the inference. */
class DiagnosticianTest {
  private static final PointName FALL = new PointName("fall");
  private static final LineName SUPPLY = new LineName("supply");
  private static final When RUNNING = new When.Running();
  private static final double DENSITY = 1000;

  private final AsBuilt job = AsBuilt.of(network());
  private final CauseTable all = CauseTable.of(job);

  private static Network network() {
    Bore bore = new Bore(0.052);
    PumpCurve curve =
        new PumpCurve(
            List.of(
                new PumpPoint(0, 7.2, OptionalDouble.of(250)),
                new PumpPoint(0.002, 6.2, OptionalDouble.of(348)),
                new PumpPoint(0.004, 3.35, OptionalDouble.of(405)),
                new PumpPoint(0.0052, 0, OptionalDouble.of(410))));
    Line supply =
        new Line(
            SUPPLY,
            new PointName("pond"),
            FALL,
            Optional.of(bore),
            List.of(
                new Pump(
                    "invented",
                    new PumpSet(curve, 1, 1, PumpSet.Arrangement.PARALLEL, Optional.empty())),
                new Gauge("G1", 0, Optional.of(bore)),
                new CheckValve("check valve", 0, 2, bore),
                new Valve("valve", new Valve.GivenLoss(0.1), bore, false),
                new Gauge("G2", 0, Optional.of(bore)),
                new Run(26, bore, new Friction.Roughness(1e-5), "pipe")),
            new LineEnd(EndLoss.NONE, Optional.of(bore)),
            new LineEnd(EndLoss.OPEN_WATER, Optional.of(bore)));
    return new Network(
        new Water(DENSITY, 1e-6, 2300),
        0,
        List.of(
            new Basin(
                new PointName("pond"),
                0,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty()),
            new Fall(
                FALL,
                1.85,
                new PowerWeir(1.6, 0.61, BrinkRule.FREE_OVERFALL),
                0.3,
                OptionalDouble.empty(),
                Optional.empty())),
        List.of(supply));
  }

  private CauseTable only(String... names) {
    List<Cause> kept = new ArrayList<>();
    for (Cause cause : all.causes()) {
      if (List.of(names).contains(cause.id().cause())) {
        kept.add(cause);
      }
    }
    return new CauseTable(kept);
  }

  private static double probability(Diagnosis diagnosis, String cause) {
    return diagnosis.causes().stream()
        .filter(entry -> entry.cause().id().cause().equals(cause))
        .mapToDouble(Explanation::probability)
        .sum();
  }

  private double flow() {
    return job.state().line(SUPPLY).flowM3PerS();
  }

  /**
   * Stream leak or nothing wrong, by one flow: the leak's evidence is the integral of the density
   * of q = (1 − s) Q over shares s of 0.1 (a tenth less: somebody calls) to 0.7, taken here by a
   * hundred thousand steps.
   */
  @Test
  void oneReadingAndTwoCausesGiveTheRatioOfTheirIntegrals() {
    double read = 0.8 * flow();
    Tolerance tolerance = Tolerance.ofShare(0.07);
    double leak = 0;
    int steps = 100_000;
    for (int i = 0; i < steps; i++) {
      double share = 0.1 + (i + 0.5) / steps * 0.6;
      leak += density(read, (1 - share) * flow()) / steps;
    }
    double nothing = density(read, flow());
    double expected = 0.04 * leak / (0.04 * leak + 0.05 * nothing);

    Diagnosis diagnosis =
        Diagnostician.of(job, only("stream leak", "nothing wrong"), List.of(), Sizes.CALLED_FOR)
            .explain(
                List.of(new Reading(new Measurands.Flow(FALL, RUNNING), read, tolerance)),
                cause -> 1);

    assertEquals(expected, probability(diagnosis, "stream leak"), 0.002);
    assertEquals(1, diagnosis.causes().stream().mapToDouble(Explanation::probability).sum(), 1e-12);
  }

  /** Half of 7 % of what is predicted, and 1 % of what was built; t of 7 degrees by its formula. */
  private double density(double read, double predicted) {
    double deviation = Math.hypot(0.035 * predicted, 0.01 * flow());
    double z = (read - predicted) / deviation;
    return 16 / (5 * Math.PI * Math.sqrt(7)) * Math.pow(1 + z * z / 7, -4) / deviation;
  }

  /** With the pump off G2 shows the crest: h = p/ρg is the lift, whatever the friction. */
  @Test
  void thePumpOffReadingTellsTheLift() {
    double pressure = DENSITY * 9.80665 * (1.85 + 1.4);
    Diagnosis diagnosis =
        Diagnostician.of(job, all, List.of(), Sizes.CALLED_FOR)
            .explain(
                List.of(
                    new Reading(
                        new Measurands.GaugePressure("G2", new When.PumpOff()),
                        pressure,
                        Tolerance.of(1700))),
                cause -> 1);
    Explanation first = diagnosis.causes().get(0);
    assertEquals("more lift than drawn", first.cause().id().cause());
    assertEquals(1.4, first.size().orElseThrow(), 0.03);
    assertEquals(pressure, first.predicted().get(0).orElseThrow(), 300);
  }

  /** A cage and a worn pump read alike but for the shut-off test, which tells them wholly apart. */
  @Test
  void aReadingThatTellsTwoEqualCausesApartTellsOneBit() {
    Diagnosis diagnosis =
        Diagnostician.of(job, only("intake cage packed", "pump worn"), List.of(), Sizes.CALLED_FOR)
            .explain(
                List.of(
                    new Reading(
                        new Measurands.Flow(FALL, RUNNING), 0.6 * flow(), Tolerance.ofShare(0.02))),
                cause -> cause.id().cause().equals("pump worn") ? balance() : 1);
    NextReading best = diagnosis.next().get(0);
    double p = probability(diagnosis, "pump worn");
    double most = -(p * Math.log(p) + (1 - p) * Math.log(1 - p)) / Math.log(2);
    assertEquals(new Measurands.GaugePressure("G1", new When.ValveShut(SUPPLY)), best.what());
    assertEquals(most, best.bits(), 0.02);
    assertTrue(most > 0.9, "the two are about even: " + p);
    assertEquals(best.what(), diagnosis.separatedBy().orElseThrow().what());
  }

  private static double balance() {
    return 0.7;
  }

  /** Signs multiply the odds. */
  @Test
  void signsMultiplyTheOdds() {
    Diagnostician knows =
        Diagnostician.of(job, only("intake cage packed", "pump worn"), List.of(), Sizes.CALLED_FOR);
    List<Reading> readings =
        List.of(
            new Reading(new Measurands.Flow(FALL, RUNNING), 0.6 * flow(), Tolerance.ofShare(0.05)));
    Diagnosis without = knows.explain(readings, cause -> 1);
    Diagnosis with =
        knows.explain(readings, cause -> cause.id().cause().equals("intake cage packed") ? 4 : 1);
    assertEquals(4 * odds(without), odds(with), 1e-9 * odds(with));
  }

  private static double odds(Diagnosis diagnosis) {
    return probability(diagnosis, "intake cage packed") / probability(diagnosis, "pump worn");
  }

  /** What weakens no fall by a tenth is left out, unless nobody called. */
  @Test
  void sizesForWhichNobodyCallsAreLeftOut() {
    CauseTable wear = only("pump worn", "nothing wrong");
    List<Reading> alittle =
        List.of(
            new Reading(
                new Measurands.Flow(FALL, RUNNING), 0.97 * flow(), Tolerance.ofShare(0.01)));
    double called =
        probability(
            Diagnostician.of(job, wear, List.of(), Sizes.CALLED_FOR).explain(alittle, c -> 1),
            "pump worn");
    double notCalled =
        probability(
            Diagnostician.of(job, wear, List.of(), Sizes.ALL).explain(alittle, c -> 1),
            "pump worn");
    assertTrue(called < 0.05, "called " + called);
    assertTrue(notCalled > 2 * called, "not called " + notCalled);
  }

  /** The likeliest causes are tried; the rest counts to what no cause describes, by its priors. */
  @Test
  void causesBeyondTheBoundCountToNoneOfThese() {
    Scope scope = Scope.of(job, List.of());
    Sweeping some = Sweeping.of(scope, all, Unnoticed.COUNTS, Progress.UNSEEN, 1);
    List<Cause> tried = some.hypotheses().stream().map(Hypothesis::cause).toList();
    Diagnosis diagnosis = new Diagnostician(scope, some, true).explain(List.of(), cause -> 1);
    assertEquals(all.causes().size() - tried.size(), diagnosis.untried());
    assertTrue(diagnosis.untried() > 0 && tried.size() > 2, tried.size() + " tried");
    double least =
        tried.stream()
            .filter(cause -> !cause.isUnnamed() && !cause.mayGoUnnoticed())
            .mapToDouble(Cause::prior)
            .min()
            .orElseThrow();
    double left = 0;
    for (Cause cause : all.causes()) {
      if (!tried.contains(cause)) {
        assertTrue(cause.prior() <= least, cause.id().toString());
        left += cause.prior();
      }
    }
    double unnamed = all.causes().stream().filter(Cause::isUnnamed).mapToDouble(Cause::prior).sum();
    assertEquals(left + unnamed, probability(diagnosis, CauseTable.NONE_OF_THESE), 1e-9);
    assertEquals(1, diagnosis.causes().stream().mapToDouble(Explanation::probability).sum(), 1e-9);
  }

  @Test
  void withoutWorkNothingIsTriedAndNothingIsHidden() {
    Scope scope = Scope.of(job, List.of());
    Sweeping none = Sweeping.of(scope, all, Unnoticed.COUNTS, Progress.UNSEEN, 0);
    Diagnosis diagnosis = new Diagnostician(scope, none, true).explain(List.of(), cause -> 1);
    assertEquals(all.causes().size() - 1, diagnosis.untried());
    assertEquals(1, probability(diagnosis, CauseTable.NONE_OF_THESE), 1e-12);
  }
}
