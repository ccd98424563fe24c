package rillwright.solver.invariant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static rillwright.solver.invariant.Sound.BORE;
import static rillwright.solver.invariant.Sound.LAW;
import static rillwright.solver.invariant.Sound.ONE;
import static rillwright.solver.invariant.Sound.POINT;
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
import rillwright.solver.law.minor.ValveTravel;
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

/** What is refused, and what is said then: the value, and what it must be. */
class RefusedNetworksTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final OptionalDouble LESS = OptionalDouble.of(-0.5);
  private static final Friction SMOOTH = new Friction.Roughness(0);

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
            "target flow is -0.5 m³/s; it must be at least 0",
            does(() -> new Fall(POINT, 1, WEIR, 0.15, LESS, Optional.empty()))),
        arguments(
            "target flow is -0.5 m³/s; it must be at least 0",
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
  @MethodSource({"points", "parts", "networks"})
  void saysWhatTheValueIsAndWhatItMustBe(String message, Executable construction) {
    Throwable refusal = assertThrows(IllegalArgumentException.class, construction);
    assertEquals(message, refusal.getMessage());
  }
}
