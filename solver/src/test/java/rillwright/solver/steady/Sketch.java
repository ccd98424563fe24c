package rillwright.solver.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.law.weir.Weir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Nozzle;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.network.Valve;
import rillwright.solver.water.Water;

/** A network drawn with few words, for tests. Ends of lines cost nothing unless they are given. */
final class Sketch {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private final List<Point> points = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private Water water = Water.at(20);

  Sketch viscosity(double kinematicViscosityM2PerS) {
    water = new Water(998.2, kinematicViscosityM2PerS, 2300);
    return this;
  }

  Sketch basin(String name, double levelM) {
    points.add(new Basin(new PointName(name), levelM, Optional.empty(), UNKNOWN, UNKNOWN, UNKNOWN));
    return this;
  }

  Sketch tee(String name) {
    return tee(name, 0);
  }

  Sketch tee(String name, double drawM3PerS) {
    points.add(new Tee(new PointName(name), OptionalDouble.of(0), drawM3PerS));
    return this;
  }

  Sketch chamber(String name, double intakeM) {
    points.add(new Chamber(new PointName(name), intakeM - 0.2, intakeM, UNKNOWN, UNKNOWN));
    return this;
  }

  /** A fall half a metre wide with a discharge coefficient of 0.6. */
  Sketch fall(String name, double crestM) {
    return fall(name, crestM, PowerWeir.ofDischargeCoefficient(0.6, 0.5));
  }

  Sketch fall(String name, double crestM, Weir weir) {
    points.add(new Fall(new PointName(name), crestM, weir, 0.15, UNKNOWN, Optional.empty()));
    return this;
  }

  Sketch outlet(String name, double elevationM) {
    return outlet(name, elevationM, UNKNOWN, Optional.empty());
  }

  Sketch outlet(String name, double elevationM, OptionalDouble levelM, Optional<Nozzle> nozzle) {
    points.add(new Outlet(new PointName(name), elevationM, levelM, nozzle, UNKNOWN));
    return this;
  }

  Sketch line(String name, String from, String to, Part... parts) {
    return line(name, from, to, EndLoss.NONE, EndLoss.NONE, parts);
  }

  /** A line whose ends cost K on the velocity head of its first part with a bore. */
  Sketch line(String name, String from, String to, EndLoss entrance, EndLoss exit, Part... parts) {
    List<Part> list = List.of(parts);
    Optional<Bore> bore = list.stream().map(Part::bore).flatMap(Optional::stream).findFirst();
    lines.add(
        new Line(
            new LineName(name),
            new PointName(from),
            new PointName(to),
            bore,
            list,
            new LineEnd(entrance, bore),
            new LineEnd(exit, bore)));
    return this;
  }

  Network network() {
    return new Network(water, 0, points, lines);
  }

  SteadyState solve() {
    return SteadyStateFinder.find(network());
  }

  static Run pipe(double lengthM, double diameterM) {
    return pipe(lengthM, diameterM, new Friction.Roughness(1e-5));
  }

  static Run pipe(double lengthM, double diameterM, Friction friction) {
    return new Run(lengthM, new Bore(diameterM), friction, "pipe");
  }

  /** A pipe with a fixed Darcy friction factor. */
  static Run pipe(double lengthM, double diameterM, double factor) {
    return pipe(lengthM, diameterM, new Friction.DarcyFactor(factor));
  }

  static Fitting fitting(double k, double diameterM) {
    return new Fitting("fitting", 1, k, new Bore(diameterM));
  }

  /** Says that a change of bore takes nothing, as textbooks do that neglect it. */
  static Fitting neglected() {
    return new Fitting("fitting", 1, new VelocityHeadLoss(0, new Bore(1)), true);
  }

  /** A loss of {@code k} times the square of the flow, m and m³/s. */
  static Loss quadratic(double k) {
    return new Loss(new PowerLoss(k, 1, 2), Optional.empty());
  }

  static CheckValve check(double crackingHeadM) {
    return new CheckValve("check", crackingHeadM, 2, new Bore(0.05));
  }

  static Valve shutValve() {
    return new Valve("valve", new Valve.GivenLoss(Double.POSITIVE_INFINITY), new Bore(0.05), false);
  }

  static Skimmer skimmer(double widthM, double sillM) {
    return new Skimmer(widthM, UNKNOWN, sillM, Skimmer.WITH_DOOR, 0);
  }

  static Gauge gauge(String name) {
    return new Gauge(name, 0, Optional.of(new Bore(0.05)));
  }

  /** A pump through points of flow (m³/s) and head (m), two numbers a point. */
  static Pump pump(double... flowsAndHeads) {
    return pump(1, PumpSet.Arrangement.PARALLEL, flowsAndHeads);
  }

  static Pump pump(int count, PumpSet.Arrangement arrangement, double... flowsAndHeads) {
    PumpCurve curve = curve(flowsAndHeads);
    return new Pump("test", new PumpSet(curve, 1, count, arrangement, Optional.empty()));
  }

  static PumpCurve curve(double... flowsAndHeads) {
    List<PumpPoint> sheet = new ArrayList<>();
    for (int i = 0; i < flowsAndHeads.length; i += 2) {
      sheet.add(new PumpPoint(flowsAndHeads[i], flowsAndHeads[i + 1], OptionalDouble.empty()));
    }
    return new PumpCurve(sheet);
  }

  static double flow(SteadyState state, String line) {
    return state.line(new LineName(line)).flowM3PerS();
  }

  static double head(SteadyState state, String point) {
    return state.point(new PointName(point)).headM().getAsDouble();
  }

  static boolean isDetermined(SteadyState state, String point) {
    return state.point(new PointName(point)).isDetermined();
  }

  static double outflow(SteadyState state, String point) {
    return state.point(new PointName(point)).outflowM3PerS();
  }

  static boolean isOpen(SteadyState state, String line) {
    return state.line(new LineName(line)).open();
  }
}
