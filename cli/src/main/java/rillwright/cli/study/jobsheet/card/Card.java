package rillwright.cli.study.jobsheet.card;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.study.Feeders;
import rillwright.cli.study.jobsheet.card.CardReading.Brink;
import rillwright.cli.study.jobsheet.card.CardReading.CrestHead;
import rillwright.cli.study.jobsheet.card.CardReading.Level;
import rillwright.cli.study.jobsheet.card.CardReading.Power;
import rillwright.cli.study.jobsheet.card.CardReading.What;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.study.diagnosis.reading.Tolerance;

/**
 * What to read on the day: flow and depths at falls, flow at outlets in air, gauges, the power of
 * pumps, levels of chambers; with the usual errors of readings and, at a crest, its formula's.
 */
public final class Card {
  /** How far upstream of a crest its head is read, in heads. */
  static final double HEADS_BACK = 4;

  private final SteadyState state;
  private final CrewTools tools;
  private final List<CardReading> readings = new ArrayList<>();

  private Card(Solved solved) {
    this.state = solved.state();
    this.tools = CrewTools.of(solved.job().show());
  }

  /**
   * The readings, in the order in which they are shown; none where a chamber is drawn down to its
   * pump's intake, since nothing is steady then, or water boils in a pump. A level that differs
   * from the basin's by less than its error is left out.
   */
  public static List<CardReading> of(Solved solved) {
    return all(solved).stream()
        .filter(reading -> !(reading.what() instanceof Level && reading.low() == 0))
        .toList();
  }

  /** What is looked at under a pump's lid again and again: power and every level. */
  public static List<CardReading> underTheLid(Solved solved) {
    return all(solved).stream()
        .filter(reading -> reading.what() instanceof Power || reading.what() instanceof Level)
        .toList();
  }

  private static List<CardReading> all(Solved solved) {
    if (solved.state().starves() || solved.boils()) {
      return List.of();
    }
    Card card = new Card(solved);
    solved.state().points().forEach(card::wayOut);
    card.readings.addAll(GaugeRounds.of(solved.state()));
    solved.state().lines().forEach(card::pumps);
    solved.state().points().forEach(card::chamber);
    return card.readings;
  }

  private void wayOut(PointState point) {
    double flow = point.outflowM3PerS();
    if (flow > 0 && point.point() instanceof Fall fall) {
      timed(fall.name().value(), flow);
      depths(fall, flow);
    } else if (flow > 0 && point.point() instanceof Outlet outlet && outlet.levelM().isEmpty()) {
      timed(outlet.name().value(), flow);
    }
  }

  private void timed(String at, double flowM3PerS) {
    TimedFlow timed = TimedFlow.of(flowM3PerS, tools);
    add(at, timed.what(), timed.seconds(), timed.share() * timed.seconds());
  }

  private void depths(Fall fall, double flow) {
    String at = fall.name().value();
    double head = fall.weir().headAt(flow);
    add(at, new CrestHead(HEADS_BACK * head), head, band(head, fall));
    OptionalDouble brink = fall.weir().brinkDepthAt(flow);
    if (brink.isPresent()) {
      add(at, new Brink(), brink.getAsDouble(), band(brink.getAsDouble(), fall));
    }
  }

  private static double band(double depthM, Fall fall) {
    return Math.hypot(fall.depthBand() * depthM, Tolerance.RULER.halfWidthAt(depthM));
  }

  private void pumps(LineState line) {
    for (PartState part : line.parts()) {
      if (part.part() instanceof Pump pump) {
        double flow = part.flowM3PerS();
        double watts = flow > 0 ? pump.set().powerAt(flow).orElse(0) : 0;
        if (watts > 0) {
          add(
              line.line().name().value(),
              new Power(pump.label()),
              watts,
              Tolerance.POWER.halfWidthAt(watts));
        }
      }
    }
  }

  private void chamber(PointState point) {
    if (point.point() instanceof Chamber chamber && point.headM().isPresent()) {
      for (Basin basin : Feeders.listBasins(state.network(), chamber)) {
        double below = basin.levelM() - point.headM().getAsDouble();
        add(
            chamber.name().value(),
            new Level(basin.name(), below < 0),
            Math.abs(below),
            Tolerance.LEVEL.halfWidthAt(below));
      }
    }
  }

  /** Nothing that is read here is below 0. */
  private void add(String at, What what, double expected, double error) {
    readings.add(
        new CardReading(
            at,
            what,
            OptionalDouble.of(expected),
            Math.max(0, expected - error),
            expected + error));
  }
}
