package rillwright.cli.report.text;

import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.unit.Unit;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.TabulatedLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.ChangeOfBore;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;

/** A part in a few words: "38 ft of 2 in flexible PVC", "3 × elbow 90 (K 0.9)". */
public final class PartWords {
  /** What "(K 0.57)" behind a part means. */
  public static final String K =
      "K is the loss coefficient of a part: the larger it is, the more head the part takes at one"
          + " speed of the water. About 0.06 for an open ball valve, 0.6 for an elbow, 2 for a"
          + " swing"
          + " check valve.";

  private static final double FULL_SPEED = 1;

  /** A loss of less is shown as a depth of water. */
  private static final double TALL_M = 0.25;

  private static final Map<Class<? extends Part>, BiFunction<Part, ShownUnits, String>> BY_KIND =
      Map.ofEntries(
          entry(Run.class, PartWords::run),
          entry(Fitting.class, PartWords::fitting),
          entry(Valve.class, PartWords::valve),
          entry(CheckValve.class, PartWords::checkValve),
          entry(Loss.class, PartWords::loss),
          entry(Skimmer.class, PartWords::skimmer),
          entry(Filter.class, PartWords::filter),
          entry(Pump.class, PartWords::pump),
          entry(
              Gauge.class,
              (gauge, units) -> "gauge \"" + gauge.name() + "\"" + at(gauge.elevationM(), units)),
          entry(
              HighPoint.class,
              (high, units) -> high.kind() + at(high.elevationM(), units) + air(high)));

  private PartWords() {}

  private static <P extends Part>
      Map.Entry<Class<? extends Part>, BiFunction<Part, ShownUnits, String>> entry(
          Class<P> kind, BiFunction<P, ShownUnits, String> words) {
    return Map.entry(kind, (part, units) -> words.apply(kind.cast(part), units));
  }

  private static String air(HighPoint high) {
    return switch (high.air()) {
      case PRIMED -> ", primed by hand";
      case VENTED -> ", vented";
      case SWEPT ->
          high.fallDegrees() == HighPoint.UPRIGHT_DEGREES
              ? ""
              : ", falls " + Math.round(high.fallDegrees()) + "° downstream of it";
    };
  }

  /** The words for a part; its label where there are none of its own. */
  public static String of(Part part, ShownUnits units) {
    BiFunction<Part, ShownUnits, String> words = BY_KIND.get(part.getClass());
    return words == null ? part.label() : words.apply(part, units);
  }

  /** Whether the words for a part name its {@link #K}. */
  public static boolean nameK(Part part) {
    return part instanceof Fitting
        || part instanceof CheckValve
        || (part instanceof Valve valve && !valve.isShut())
        || (part instanceof Loss loss && loss.law() instanceof VelocityHeadLoss);
  }

  /** The words for a change of bore between two runs. */
  public static String of(ChangeOfBore change, ShownUnits units) {
    Bore before = change.before().part().inside();
    Bore after = change.after().part().inside();
    return (before.diameterM() < after.diameterM() ? "enlargement, " : "reducer, ")
        + units.bore(before.diameterM())
        + " to "
        + units.bore(after.diameterM())
        + " (K "
        + units.number(change.law().kForward())
        + ")";
  }

  private static String run(Run run, ShownUnits units) {
    String of = run.label().isEmpty() ? "pipe" : run.label();
    return units.length(run.lengthM()) + " of " + of;
  }

  private static String fitting(Fitting fitting, ShownUnits units) {
    String times = fitting.count() == 1 ? "" : fitting.count() + " \u00d7 ";
    return times + fitting.label() + " (K " + units.number(fitting.loss().kForward()) + ")";
  }

  private static String valve(Valve valve, ShownUnits units) {
    if (valve.isShut()) {
      return valve.label() + ", shut";
    }
    double k = valve.loss().lossCoefficient();
    boolean throttled = valve.loss() instanceof Valve.Opening opening && opening.open() < 1;
    return valve.label()
        + (valve.loss() instanceof Valve.Opening opening ? ", " + openness(opening, units) : "")
        + (" (K " + (throttled ? units.computed(k) : units.number(k)) + ")");
  }

  private static String openness(Valve.Opening opening, ShownUnits units) {
    if (opening.open() >= 1) {
      return "open";
    }
    double degrees = ValveTravel.degreesFromOpen(opening.open());
    return units.share(opening.open())
        + " open"
        + (opening.travel().turns() ? ", handle " + Math.round(degrees) + "\u00b0 from open" : "");
  }

  private static String checkValve(CheckValve valve, ShownUnits units) {
    String opens =
        valve.crackingHeadM() > 0 ? ", opens at " + units.length(valve.crackingHeadM()) : "";
    return valve.label() + " (K " + units.number(valve.lossCoefficient()) + opens + ")";
  }

  private static String loss(Loss loss, ShownUnits units) {
    return loss.law() instanceof VelocityHeadLoss ofVelocity
        ? loss.label() + " (K " + units.number(ofVelocity.kForward()) + ")"
        : loss.label() + " (" + takes(loss.law(), units) + ")";
  }

  private static String filter(Filter filter, ShownUnits units) {
    String clean = filter.clogged() > 0 ? " when clean" : "";
    return filter.kind()
        + " ("
        + takes(filter.clean(), units)
        + clean
        + ")"
        + clogged(filter.clogged(), units);
  }

  /** What a law takes at the flow that it is known at, else at a round one: "0.9 m at 9 m3/h". */
  private static String takes(HeadLaw law, ShownUnits units) {
    double flow =
        law instanceof PowerLoss rated
            ? rated.ratedFlowM3PerS()
            : law instanceof TabulatedLoss table
                ? table.curve().lastX()
                : units.flowUnit().toSi(units.flowUnit() == Unit.GALLON_PER_HOUR ? 1000 : 10);
    double head = law.headLossAt(flow);
    return (head < TALL_M ? units.depth(head) : units.head(head))
        + " at "
        + units.writtenFlow(flow);
  }

  private static String skimmer(Skimmer skimmer, ShownUnits units) {
    return "skimmer mouth "
        + units.width(skimmer.widthM())
        + " wide, sill"
        + at(skimmer.sillM(), units)
        + clogged(skimmer.clogged(), units);
  }

  private static String pump(Pump pump, ShownUnits units) {
    int count = pump.set().count();
    boolean several = count > 1;
    String arranged = pump.set().arrangement().name().toLowerCase(Locale.ROOT);
    double speed = pump.set().speed();
    return (several ? count + " \u00d7 " : "")
        + pump.label()
        + (several ? " in " + arranged : "")
        + (speed == FULL_SPEED ? "" : " at " + units.share(speed) + " speed")
        + (pump.inlet().elevationM().isPresent()
            ? ", inlet" + at(pump.inlet().elevationM().getAsDouble(), units)
            : "")
        + pump.inlet()
            .bore()
            .map(
                bore ->
                    (pump.inlet().elevationM().isPresent() ? ", its bore " : ", inlet bore ")
                        + units.width(bore.diameterM()))
            .orElse("");
  }

  private static String clogged(double clogged, ShownUnits units) {
    return clogged > 0 ? ", " + units.share(clogged) + " clogged" : "";
  }

  private static String at(double elevationM, ShownUnits units) {
    return " at " + units.level(elevationM);
  }
}
