package rillwright.solver.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Tee;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.water.Water;

/**
 * Networks and pumps whose operating points have a closed form: a straight pump curve H₀ − sQ over
 * a lift and quadratic losses z + cQ².
 */
public final class PlainNetworks {
  /** The pump's place in each of them. */
  public static final PumpPlace PLACE = new PumpPlace(new LineName("supply"), 0);

  /** Loss of the supply line, m at 1 m³/s: 0.4 m at 2 L/s. */
  public static final double C = 1e5;

  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private PlainNetworks() {}

  /**
   * A pond at 0 m, a pump still to be chosen, a loss of 1e5 Q² and an outlet at 2 m: 2 L/s
   * targeted.
   */
  public static Network oneOutlet() {
    return oneOutlet(C);
  }

  /** The same with another loss. */
  public static Network oneOutlet(double c) {
    return oneOutlet(c, 2);
  }

  /** The same with its outlet at another elevation. */
  public static Network oneOutlet(double c, double elevationM) {
    return new Network(
        Water.at(20),
        0,
        List.of(basin(), outlet("top", elevationM, OptionalDouble.of(0.002))),
        List.of(line("supply", "pond", "top", new PlannedPump(), quadratic(c))));
  }

  /** The same without a pump, its outlet 2 m below the pond. */
  public static Network downhill(double c) {
    return new Network(
        Water.at(20),
        0,
        List.of(basin(), outlet("top", -2, OptionalDouble.of(0.002))),
        List.of(line("supply", "pond", "top", quadratic(c))));
  }

  /**
   * A pond, a trunk to a tee and from it two ways to outlets 2 m below: 1 L/s as the target of
   * each.
   */
  public static Network fork(double trunk, double near, double far) {
    return new Network(
        Water.at(20),
        0,
        List.of(
            basin(),
            new Tee(new PointName("tee"), UNKNOWN, 0),
            outlet("near end", -2, OptionalDouble.of(0.001)),
            outlet("far end", -2, OptionalDouble.of(0.001))),
        List.of(
            line("supply", "pond", "tee", quadratic(trunk)),
            line("near", "tee", "near end", quadratic(near)),
            line("far", "tee", "far end", quadratic(far))));
  }

  /** The same with a pipe beside it that no line joins to open water: there is no balance. */
  public static Network withoutBalance() {
    return new Network(
        Water.at(20),
        0,
        List.of(
            basin(),
            outlet("top", 2, OptionalDouble.of(0.002)),
            new Tee(new PointName("here"), UNKNOWN, 0),
            new Tee(new PointName("there"), UNKNOWN, 0)),
        List.of(
            line("supply", "pond", "top", new PlannedPump(), quadratic(C)),
            line("astray", "here", "there", quadratic(C))));
  }

  /**
   * The same as the first fed through a chamber that stands 1e4 Q² below the pond, its intake at
   * −0.3 m.
   */
  static Network withChamber() {
    return new Network(
        Water.at(20),
        0,
        List.of(
            basin(),
            new Chamber(new PointName("chamber"), -0.5, -0.3, UNKNOWN, UNKNOWN),
            outlet("top", 2, OptionalDouble.of(0.002))),
        List.of(
            line("intake", "pond", "chamber", quadratic(1e4)),
            line("supply", "chamber", "top", new PlannedPump(), quadratic(C))));
  }

  /** Two outlets, at 1 m and at 3 m, downstream of a tee; 1 L/s as the target of each. */
  static Network twoOutlets() {
    OptionalDouble target = OptionalDouble.of(0.001);
    return new Network(
        Water.at(20),
        0,
        List.of(
            basin(),
            new Tee(new PointName("split"), UNKNOWN, 0),
            outlet("low", 1, target),
            outlet("high", 3, target)),
        List.of(
            line("supply", "pond", "split", new PlannedPump(), quadratic(C)),
            line("to low", "split", "low", quadratic(C)),
            line("to high", "split", "high", quadratic(C))));
  }

  /** One of these with another pump beside the planned one, downstream of a loss like its. */
  static Network beside(Network one, String to, Part pump) {
    List<Line> lines = new ArrayList<>(one.lines());
    lines.add(line("other", "pond", to, pump, quadratic(C)));
    return new Network(one.water(), 0, one.points(), lines);
  }

  /** An offer with the straight curve H₀ − 600 Q and the same watts at every flow. */
  public static PumpOffer offer(String model, double shutOffM, double watts) {
    return offer(model, shutOffM, watts, Optional.empty());
  }

  /** The same with a speed that can be set. */
  public static PumpOffer offer(
      String model, double shutOffM, double watts, Optional<SpeedBand> speeds) {
    OptionalDouble power = OptionalDouble.of(watts);
    PumpCurve curve =
        new PumpCurve(
            List.of(new PumpPoint(0, shutOffM, power), new PumpPoint(shutOffM / 600, 0, power)));
    return new PumpOffer(model, curve, speeds, UNKNOWN, SuctionNeeds.NONE, true);
  }

  /** The flow at which H₀ − 600 Q = 2 + cQ². */
  public static double flowOf(double shutOffM, double c) {
    return (-600 + Math.sqrt(600 * 600 + 4 * c * (shutOffM - 2))) / (2 * c);
  }

  private static Basin basin() {
    return new Basin(new PointName("pond"), 0, Optional.empty(), UNKNOWN, UNKNOWN, UNKNOWN);
  }

  private static Outlet outlet(String name, double elevationM, OptionalDouble target) {
    return new Outlet(new PointName(name), elevationM, UNKNOWN, Optional.empty(), target);
  }

  private static Loss quadratic(double c) {
    return new Loss(new PowerLoss(c, 1, 2), Optional.empty());
  }

  private static Line line(String name, String from, String to, Part... parts) {
    LineEnd free = new LineEnd(EndLoss.NONE, Optional.empty());
    return new Line(
        new LineName(name),
        new PointName(from),
        new PointName(to),
        Optional.empty(),
        List.of(parts),
        free,
        free);
  }
}
