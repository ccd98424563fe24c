package rillwright.solver.invariant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static rillwright.solver.invariant.Sound.BORE;
import static rillwright.solver.invariant.Sound.CURVE;
import static rillwright.solver.invariant.Sound.LAW;
import static rillwright.solver.invariant.Sound.ONE;
import static rillwright.solver.invariant.Sound.POINT;
import static rillwright.solver.invariant.Sound.PUMPS;
import static rillwright.solver.invariant.Sound.SHAPE;
import static rillwright.solver.invariant.Sound.WATER;
import static rillwright.solver.invariant.Sound.WEIR;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.LimitedLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.channel.ChannelSection;
import rillwright.solver.law.channel.Manning;
import rillwright.solver.law.channel.StoneBed;
import rillwright.solver.law.curve.MonotoneCubic;
import rillwright.solver.law.filter.CloggedLaw;
import rillwright.solver.law.filter.TwoTermFit;
import rillwright.solver.law.filter.TwoTermLoss;
import rillwright.solver.law.friction.DarcyWeisbach;
import rillwright.solver.law.friction.FixedFactor;
import rillwright.solver.law.friction.HazenWilliams;
import rillwright.solver.law.minor.BackwaterLoss;
import rillwright.solver.law.minor.CheckValveLoss;
import rillwright.solver.law.minor.NozzleLoss;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.skimmer.SkimmerLaw;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.law.weir.ThinPlateWeir;
import rillwright.solver.law.weir.TiltedCrest;
import rillwright.solver.law.weir.VNotchWeir;
import rillwright.solver.law.weir.WiderCrest;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Nozzle;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.TerracedPond;
import rillwright.solver.network.TerracedPond.Shelf;
import rillwright.solver.network.Valve;
import rillwright.solver.water.Water;

/** What is refused, and what is said then: the value, and what it must be. */
class RefusalsTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final OptionalDouble LESS = OptionalDouble.of(-0.5);
  private static final Friction SMOOTH = new Friction.Roughness(0);

  static Stream<Arguments> laws() {
    return Stream.of(
        arguments("bore is 0 m; it must be greater than 0", does(() -> new Bore(0))),
        arguments("bore is -0.05 m; it must be greater than 0", does(() -> new Bore(-0.05))),
        arguments("bore is NaN m; it must be a finite number", does(() -> new Bore(Double.NaN))),
        arguments(
            "loss coefficient is -0.4; it must be at least 0",
            does(() -> new VelocityHeadLoss(-0.4, BORE))),
        arguments(
            "loss coefficient is Infinity; it must be a finite number",
            does(() -> new VelocityHeadLoss(1, Double.POSITIVE_INFINITY, BORE))),
        arguments("bore is null; it must be given", does(() -> new VelocityHeadLoss(1, null))),
        arguments("head is -1 m; it must be at least 0", does(() -> new BackwaterLoss(-1))),
        arguments(
            "cracking head is -0.1 m; it must be at least 0",
            does(() -> new CheckValveLoss(-0.1, 2, BORE))),
        arguments(
            "discharge coefficient is 0; it must be greater than 0",
            does(() -> new NozzleLoss(BORE, 0, 0))),
        arguments(
            "least flow is 0.1 m³/s; it must be 0 or negative infinity",
            does(() -> new NozzleLoss(BORE, 1, 0.1))),
        arguments(
            "least flow is -1 m³/s; it must be 0 or negative infinity",
            does(() -> new NoLoss(-1))),
        arguments(
            "rated head is 0 m; it must be greater than 0", does(() -> new PowerLoss(0, 1, 2))),
        arguments(
            "rated flow is -1 m³/s; it must be greater than 0",
            does(() -> new PowerLoss(1, -1, 2))),
        arguments("exponent is 0.9; it must be at least 1", does(() -> new PowerLoss(1, 1, 0.9))),
        arguments(
            "limit of the flow is -1 m³/s; it must be at least 0",
            does(() -> new LimitedLaw(LAW, -1))),
        arguments("open share is 0; it must be greater than 0", does(() -> new CloggedLaw(LAW, 0))),
        arguments("open share is 1.1; it must be from 0 to 1", does(() -> new CloggedLaw(LAW, 1.1))),
        arguments(
            "linear term is -1 s/m²; it must be at least 0", does(() -> new TwoTermLoss(-1, 2))),
        arguments(
            "sum of the linear and the quadratic term is 0; it must be greater than 0",
            does(() -> new TwoTermLoss(0, 0))),
        arguments(
            "flow of a filter is 0 m³/s; it must be greater than 0",
            does(() -> new TwoTermFit.Point(0, 1))),
        arguments(
            "roughness is -1.0E-5 m; it must be at least 0",
            does(() -> new DarcyWeisbach(1, BORE, -1e-5, 1e-6))),
        arguments(
            "viscosity is 0 m²/s; it must be greater than 0",
            does(() -> new DarcyWeisbach(1, BORE, 0, 0))),
        arguments(
            "length is -1 m; it must be at least 0", does(() -> new FixedFactor(-1, BORE, 0.02))),
        arguments(
            "Darcy friction factor is 0; it must be greater than 0",
            does(() -> new FixedFactor(1, BORE, 0))),
        arguments(
            "Hazen and Williams's C is 0; it must be greater than 0",
            does(() -> new HazenWilliams(1, BORE, 0))),
        arguments(
            "head of a pump is -3 m; it must be at least 0",
            does(() -> new PumpPoint(0, -3, NONE))),
        arguments(
            "power of a pump is -0.5 W; it must be at least 0",
            does(() -> new PumpPoint(0, 3, LESS))),
        arguments(
            "speed of the pump is -0.1; it must be at least 0",
            does(() -> new PumpSet(CURVE, -0.1, 1, PUMPS.arrangement(), Optional.empty()))),
        arguments(
            "count of pumps is 0; it must be at least 1",
            does(() -> new PumpSet(CURVE, 1, 0, PUMPS.arrangement(), Optional.empty()))),
        arguments(
            "free flow is -1 m³/s; it must be at least 0", does(() -> new SkimmerLaw(-1, 0.1))),
        arguments(
            "width of the crest is 0 m; it must be greater than 0",
            does(() -> new PowerWeir(1.6, 0, BrinkRule.THIN_EDGE))),
        arguments(
            "drop of the crest from end to end is 0 m; it must be greater than 0",
            does(() -> new TiltedCrest(WEIR, 0))),
        arguments(
            "factor of the width is 0; it must be greater than 0",
            does(() -> new WiderCrest(WEIR, 0))),
        arguments(
            "angle of the notch is 180 °; it must be less than 180",
            does(() -> new VNotchWeir(180))),
        arguments(
            "width of the plate is 0.001 m; it must be greater than 0.001",
            does(() -> new ThinPlateWeir(0.001, 0.2, 1))),
        arguments(
            "width of the channel is 0.4 m; it must be at least 0.5",
            does(() -> new ThinPlateWeir(0.5, 0.2, 0.4))),
        arguments(
            "size of stones is 0 m; it must be greater than 0", does(() -> new StoneBed(0))),
        arguments(
            "Manning n is -0.03 s/m^⅓; it must be greater than 0", does(() -> new Manning(-0.03))),
        arguments(
            "slope of a channel's banks is -1; it must be at least 0",
            does(() -> new ChannelSection(1, -1))),
        arguments(
            "sum of bed width and bank is 0; it must be greater than 0",
            does(() -> new ChannelSection(0, 0))),
        arguments(
            "y of a curve's point is NaN; it must be a finite number",
            does(() -> new MonotoneCubic.Knot(0, Double.NaN))),
        arguments(
            "density is 0 kg/m³; it must be greater than 0", does(() -> new Water(0, 1e-6, 2300))),
        arguments(
            "vapour pressure is -1 Pa; it must be at least 0",
            does(() -> new Water(998, 1e-6, -1))));
  }

  static Stream<Arguments> points() {
    return Stream.of(
        arguments(
            "level of a basin is NaN m; it must be a finite number",
            does(() -> new Basin(POINT, Double.NaN, Optional.empty(), NONE, NONE, NONE))),
        arguments(
            "area of a basin is -2 m²; it must be at least 0",
            does(() -> new BasinShape.Row(0, -2))),
        arguments(
            "level of a basin's area is -1 m; it must be at or above the row before, 0 m",
            does(() -> new BasinShape(List.of(SHAPE.rows().get(1), SHAPE.rows().get(0))))),
        arguments(
            "shape of a basin has no row; it must have one or more",
            does(() -> new BasinShape(List.of()))),
        arguments(
            "intake of a chamber is -2 m; it must be at or above the floor, -1 m",
            does(() -> new Chamber(POINT, -1, -2, NONE, NONE))),
        arguments(
            "top of a chamber is -0.5 m; it must be greater than -0.5",
            does(() -> new Chamber(POINT, -0.5, -0.5, LESS, NONE))),
        arguments(
            "top of a chamber is -0.5 m; it must be at or above the intake, -0.4 m",
            does(() -> new Chamber(POINT, -1, -0.4, LESS, NONE))),
        arguments(
            "area of a chamber is -0.5 m²; it must be greater than 0",
            does(() -> new Chamber(POINT, -1, -0.4, NONE, LESS))),
        arguments(
            "band of the depth over a fall is 15; it must be from 0 to 1",
            does(() -> new Fall(POINT, 1, WEIR, 15, NONE, Optional.empty()))),
        arguments(
            "wished flow is -0.5 m³/s; it must be at least 0",
            does(() -> new Fall(POINT, 1, WEIR, 0.15, LESS, Optional.empty()))),
        arguments(
            "wished flow is -0.5 m³/s; it must be at least 0",
            does(() -> new Outlet(POINT, 1, ONE, Optional.empty(), LESS))),
        arguments(
            "discharge coefficient is 0; it must be greater than 0",
            does(() -> new Nozzle(BORE, 0))),
        arguments(
            "width of a shelf is 0 m; it must be greater than 0", does(() -> new Shelf(0.3, 0))),
        arguments(
            "depth of a shelf is 1.2 m; it must be less than 1",
            does(() -> new TerracedPond(4, 3, 1, List.of(new Shelf(1.2, 0.3))))),
        arguments(
            "depth of a shelf is 0.3 m; it must be greater than 0.4",
            does(
                () ->
                    new TerracedPond(4, 3, 1, List.of(new Shelf(0.4, 0.3), new Shelf(0.3, 0.3))))),
        arguments(
            "width of all shelves, both sides is 3 m; it must be less than 3",
            does(() -> new TerracedPond(4, 3, 1, List.of(new Shelf(0.4, 1.5))))));
  }

  static Stream<Arguments> parts() {
    return Stream.of(
        arguments(
            "length of a run is 0 m; it must be greater than 0",
            does(() -> new Run(0, BORE, SMOOTH, ""))),
        arguments(
            "roughness is -1 m; it must be at least 0", does(() -> new Friction.Roughness(-1))),
        arguments(
            "Hazen and Williams's C is 0; it must be greater than 0",
            does(() -> new Friction.HazenC(0))),
        arguments(
            "count of fittings is 0; it must be at least 1",
            does(() -> new Fitting("elbow 90", 0, 0.9, BORE))),
        arguments(
            "loss coefficient is -0.4; it must be at least 0",
            does(() -> new Fitting("elbow 90", 1, -0.4, BORE))),
        arguments(
            "loss coefficient is -0.4; it must be at least 0",
            does(() -> new CheckValve("swing", 0, -0.4, BORE))),
        arguments(
            "loss coefficient is -0.4; it must be at least 0",
            does(() -> new Valve.GivenLoss(-0.4))),
        arguments(
            "opening of a valve is 1.5; it must be from 0 to 1",
            does(() -> new Valve.Opening(ValveTravel.BALL, 1.5))),
        arguments(
            "clogged share of a filter is 40; it must be from 0 to 1",
            does(() -> new Filter(LAW, 40, NONE, 0))),
        arguments(
            "water held by a filter is -1 m³; it must be at least 0",
            does(() -> new Filter(LAW, 0, NONE, -1))),
        arguments(
            "width of a skimmer is 0 m; it must be greater than 0",
            does(() -> new Skimmer(0, NONE, 0, 0.36, 0))),
        arguments(
            "clogged share of a skimmer is -0.1; it must be from 0 to 1",
            does(() -> new Skimmer(0.3, NONE, 0, 0.36, -0.1))),
        arguments(
            "loss coefficient of an end while water leaves is -1; it must be at least 0",
            does(() -> new EndLoss(0.5, -1))));
  }

  static Stream<Arguments> networks() {
    Basin pond = new Basin(POINT, 0, Optional.empty(), NONE, NONE, NONE);
    Basin high = new Basin(new PointName("high"), 1, Optional.empty(), NONE, NONE, NONE);
    Chamber chamber = new Chamber(new PointName("chamber"), -1, -1, NONE, NONE);
    Skimmer mouth = new Skimmer(0.3, NONE, -0.1, 0.36, 0);
    Basin unnamed = new Basin(new PointName(" "), 0, Optional.empty(), NONE, NONE, NONE);
    return Stream.of(
        arguments(
            "elevation of the site is NaN m; it must be a finite number",
            does(() -> new Network(WATER, Double.NaN, List.of(), List.of()))),
        arguments("name of a point is \" \"; it must not be blank", does(() -> network(unnamed))),
        arguments("two points are called \"pond\"", does(() -> network(pond, pond))),
        arguments(
            "line \"supply\" ends at \"high\", which is not there",
            does(() -> joined(pond, high, new PlannedPump(), pond))),
        arguments(
            "line \"supply\" ends where it begins",
            does(() -> joined(pond, pond, new PlannedPump(), pond))),
        arguments(
            "line \"supply\" has a skimmer and begins at \"chamber\"; it must begin at a basin",
            does(() -> joined(chamber, pond, mouth, pond, chamber))));
  }

  private static Executable does(Executable construction) {
    return construction;
  }

  private static Network network(Point... points) {
    return new Network(WATER, 0, List.of(points), List.of());
  }

  private static Network joined(Point from, Point to, Part part, Point... points) {
    Line line =
        new Line(
            new LineName("supply"),
            from.name(),
            to.name(),
            Optional.empty(),
            List.of(part),
            Sound.END,
            Sound.END);
    return new Network(WATER, 0, List.of(points), List.of(line));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({"laws", "points", "parts", "networks"})
  void saysWhatTheValueIsAndWhatItMustBe(String message, Executable construction) {
    Throwable refusal = assertThrows(IllegalArgumentException.class, construction);
    assertEquals(message, refusal.getMessage());
  }
}
