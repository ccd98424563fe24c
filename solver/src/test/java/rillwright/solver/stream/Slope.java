package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.law.channel.ChannelSection;
import rillwright.solver.law.channel.StoneBed;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.stream.Reach.Band;
import rillwright.solver.water.Water;

/** A pond, a skimmer, a pump, a fall and a stream: a plan in few words, for tests. */
public final class Slope {
  public static final PointName POND = new PointName("pond");
  public static final PointName CHAMBER = new PointName("chamber");
  public static final PointName FALL = new PointName("fall");
  public static final double CREST_M = 2;
  public static final double POND_AREA_M2 = 12;

  private static final Bore BORE = new Bore(0.06);
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

  private BasinShape shape = upright(POND_AREA_M2);
  private OptionalDouble chamberAreaM2 = OptionalDouble.of(0.3);
  private boolean checkValve = true;
  private double sillM = -0.12;
  private Map<PointName, FallBox> boxes = Map.of();
  private Optional<WaterLoss> loss = Optional.empty();
  private List<StreamItem> items = List.of(reach(12, 0.5), pool(1.5), new Step(1.5, 0.5));
  private OptionalDouble overflowM = OptionalDouble.of(0.01);
  private double tapM3PerS;

  public Slope shape(BasinShape other) {
    shape = other;
    return this;
  }

  public Slope chamberArea(double areaM2) {
    chamberAreaM2 = OptionalDouble.of(areaM2);
    return this;
  }

  public Slope withoutChamberArea() {
    chamberAreaM2 = OptionalDouble.empty();
    return this;
  }

  public Slope withoutCheckValve() {
    checkValve = false;
    return this;
  }

  public Slope sill(double levelM) {
    sillM = levelM;
    return this;
  }

  public Slope box(double areaM2) {
    boxes = Map.of(FALL, new FallBox(areaM2, 0));
    return this;
  }

  public Slope loss(double evaporationMPerS, double splash) {
    loss = Optional.of(new WaterLoss(evaporationMPerS, false, splash));
    return this;
  }

  public Slope dampWeather() {
    loss = Optional.of(new WaterLoss(0, true, 0));
    return this;
  }

  /** A pond with upright walls. */
  public Slope area(double areaM2) {
    return shape(upright(areaM2));
  }

  private static BasinShape upright(double areaM2) {
    return new BasinShape(
        List.of(new BasinShape.Row(-0.8, areaM2), new BasinShape.Row(0.3, areaM2)));
  }

  /** What is drawn from the chamber beside the pump, m³/s. */
  public Slope tap(double drawM3PerS) {
    tapM3PerS = drawM3PerS;
    return this;
  }

  public Slope overflow(double levelM) {
    overflowM = OptionalDouble.of(levelM);
    return this;
  }

  public Slope withoutOverflow() {
    overflowM = UNKNOWN;
    return this;
  }

  public Slope items(StreamItem... others) {
    items = List.of(others);
    return this;
  }

  public static Reach reach(double lengthM, double dropM) {
    return new Reach(
        lengthM,
        dropM,
        new ChannelSection(0.4, 1),
        new StoneBed(0.05),
        Band.STONES,
        new Gravel(0.08, 0.4, 0.5),
        OptionalDouble.of(0.2));
  }

  public static Pool pool(double areaM2) {
    return new Pool(areaM2, 0.3, weir(0.5), 0.3);
  }

  private static PowerWeir weir(double widthM) {
    return PowerWeir.ofDischargeCoefficient(0.6, widthM);
  }

  public StreamPlan plan() {
    Network network =
        new Network(
            Water.at(20),
            0,
            List.of(
                new Basin(POND, 0, Optional.of(shape), overflowM, OptionalDouble.of(0.1), UNKNOWN),
                new Chamber(CHAMBER, -0.7, -0.4, UNKNOWN, chamberAreaM2),
                new Fall(FALL, CREST_M, weir(0.6), 0.15, UNKNOWN, Optional.empty())),
            List.of(
                line(
                    "intake",
                    POND,
                    CHAMBER,
                    new Skimmer(0.4, OptionalDouble.of(0.17), sillM, Skimmer.WITH_DOOR, 0)),
                supply()));
    if (tapM3PerS > 0) {
      Tee tap = new Tee(new PointName("tap"), UNKNOWN, tapM3PerS);
      Run run = new Run(1, BORE, new Friction.Roughness(1e-5), "pipe");
      List<Point> points = new ArrayList<>(network.points());
      List<Line> lines = new ArrayList<>(network.lines());
      points.add(tap);
      lines.add(line("branch", CHAMBER, tap.name(), run));
      network = network.with(points, lines);
    }
    return new StreamPlan(network, List.of(new Stream("main", FALL, POND, items)), boxes, loss);
  }

  private Line supply() {
    List<Part> parts = new ArrayList<>();
    parts.add(pump());
    if (checkValve) {
      parts.add(new CheckValve("swing", 0, 2, BORE));
    }
    parts.add(new Run(25, BORE, new Friction.Roughness(1e-5), "pipe"));
    parts.add(new Loss(new PowerLoss(0.2, 0.003, 2), Optional.empty()));
    return line("supply", CHAMBER, FALL, parts.toArray(new Part[0]));
  }

  private static Line line(String name, PointName from, PointName to, Part... parts) {
    LineEnd plain = new LineEnd(EndLoss.NONE, Optional.of(BORE));
    return new Line(new LineName(name), from, to, Optional.of(BORE), List.of(parts), plain, plain);
  }

  private static Pump pump() {
    PumpCurve curve =
        new PumpCurve(
            List.of(
                new PumpPoint(0, 4.5, UNKNOWN),
                new PumpPoint(0.003, 3.2, UNKNOWN),
                new PumpPoint(0.006, 0, UNKNOWN)));
    return new Pump(
        "test", new PumpSet(curve, 1, 1, PumpSet.Arrangement.PARALLEL, Optional.empty()));
  }
}
