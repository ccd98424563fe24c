package rillwright.solver.study.valvesetting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.network.Valve;
import rillwright.solver.water.Water;

/** A network with targets and valves, built in few words. Ends of lines cost nothing. */
final class Garden {
  static final Bore BORE = new Bore(0.04);

  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private final List<Point> points = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();

  Garden basin(String name, double levelM) {
    points.add(new Basin(new PointName(name), levelM, Optional.empty(), UNKNOWN, UNKNOWN, UNKNOWN));
    return this;
  }

  Garden chamber(String name, double intakeM) {
    points.add(new Chamber(new PointName(name), intakeM - 0.2, intakeM, UNKNOWN, UNKNOWN));
    return this;
  }

  Garden tee(String name) {
    return tee(name, 0);
  }

  Garden tee(String name, double drawM3PerS) {
    points.add(new Tee(new PointName(name), OptionalDouble.of(0), drawM3PerS));
    return this;
  }

  /** An outlet in air, at which the head is its elevation; target 0 for none. */
  Garden outlet(String name, double elevationM, double targetM3PerS) {
    points.add(
        new Outlet(
            new PointName(name), elevationM, UNKNOWN, Optional.empty(), target(targetM3PerS)));
    return this;
  }

  /** A fall half a metre wide; target 0 for none. */
  Garden fall(String name, double crestM, double targetM3PerS) {
    PowerWeir weir = PowerWeir.ofDischargeCoefficient(0.6, 0.5);
    points.add(
        new Fall(new PointName(name), crestM, weir, 0.15, target(targetM3PerS), Optional.empty()));
    return this;
  }

  private static OptionalDouble target(double targetM3PerS) {
    return targetM3PerS > 0 ? OptionalDouble.of(targetM3PerS) : UNKNOWN;
  }

  Garden line(String name, String from, String to, Part... parts) {
    LineEnd plain = new LineEnd(EndLoss.NONE, Optional.of(BORE));
    lines.add(
        new Line(
            new LineName(name),
            new PointName(from),
            new PointName(to),
            Optional.of(BORE),
            List.of(parts),
            plain,
            plain));
    return this;
  }

  Network network() {
    return new Network(Water.at(20), 0, points, lines);
  }

  /** A loss of {@code k} times the square of the flow, m and m³/s. */
  static Loss quadratic(double k) {
    return new Loss(new PowerLoss(k, 1, 2), Optional.empty());
  }

  /** A valve of which only the loss is known. */
  static Valve valve(double k) {
    return new Valve("valve", new Valve.GivenLoss(k), BORE, true);
  }

  static Valve ball() {
    return valve(ValveTravel.BALL);
  }

  static Valve valve(ValveTravel travel) {
    return new Valve(travel.word() + " valve", new Valve.Opening(travel, 0.5), BORE, true);
  }

  /** A pump with a straight curve. */
  static Pump pump(double shutOffHeadM, double greatestFlowM3PerS) {
    PumpCurve curve =
        new PumpCurve(
            List.of(
                new PumpPoint(0, shutOffHeadM, UNKNOWN),
                new PumpPoint(greatestFlowM3PerS, 0, UNKNOWN)));
    return new Pump(
        "test", new PumpSet(curve, 1, 1, PumpSet.Arrangement.PARALLEL, Optional.empty()));
  }

  static Skimmer skimmer(double widthM, double sillM) {
    return new Skimmer(widthM, UNKNOWN, sillM, Skimmer.WITH_DOOR, 0);
  }

  static ValveSettings balanced(Network network) {
    return ValveSettingFinder.find(
        network, ValvePlace.listAdjustable(network), ValveSettingFinder.Aim.LARGEST_SHARE);
  }

  static ValveSettings targeted(Network network) {
    return ValveSettingFinder.find(
        network, ValvePlace.listAdjustable(network), ValveSettingFinder.Aim.TARGET);
  }

  static double share(ValveSettings settings, String fall) {
    PointName name = new PointName(fall);
    return settings.state().point(name).outflowM3PerS()
        / settings.state().network().point(name).targetM3PerS().orElseThrow();
  }

  static SetValve set(ValveSettings settings, String line) {
    return settings.valves().stream()
        .filter(valve -> valve.place().line().equals(new LineName(line)))
        .findFirst()
        .orElseThrow();
  }
}
