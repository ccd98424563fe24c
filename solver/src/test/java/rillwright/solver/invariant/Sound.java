package rillwright.solver.invariant;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.Lift;
import rillwright.solver.law.LimitedLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.OneWayLaw;
import rillwright.solver.law.SeriesLaw;
import rillwright.solver.law.Shut;
import rillwright.solver.law.channel.ChannelSection;
import rillwright.solver.law.channel.Manning;
import rillwright.solver.law.channel.StoneBed;
import rillwright.solver.law.curve.MonotoneCubic;
import rillwright.solver.law.filter.CloggedLaw;
import rillwright.solver.law.filter.OpenTopLaw;
import rillwright.solver.law.filter.TwoTermFit;
import rillwright.solver.law.filter.TwoTermLoss;
import rillwright.solver.law.minor.BackwaterLoss;
import rillwright.solver.law.minor.CheckValveLoss;
import rillwright.solver.law.minor.NozzleLoss;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.TabulatedLoss;
import rillwright.solver.law.minor.ValveLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.law.pump.SuctionNeeds;
import rillwright.solver.law.skimmer.SkimmerLaw;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.law.weir.TiltedCrest;
import rillwright.solver.law.weir.VNotchWeir;
import rillwright.solver.law.weir.Weir;
import rillwright.solver.law.weir.WeirLaw;
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
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Nozzle;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.PipeWall;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.PumpInlet;
import rillwright.solver.network.Run;
import rillwright.solver.network.Screen;
import rillwright.solver.network.Setting;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Spill;
import rillwright.solver.network.Tee;
import rillwright.solver.network.TerracedPond;
import rillwright.solver.network.Valve;
import rillwright.solver.water.Water;

/** One sound record of each kind, all optional values given. */
final class Sound {
  static final OptionalDouble ONE = OptionalDouble.of(1);
  static final Water WATER = Water.at(20);
  static final Bore BORE = new Bore(0.05);
  static final PointName POINT = new PointName("pond");
  static final HeadLaw LAW = new VelocityHeadLoss(1, BORE);
  static final Weir WEIR = new PowerWeir(1.6, 0.5, BrinkRule.FREE_OVERFALL);
  static final PumpCurve CURVE =
      new PumpCurve(List.of(new PumpPoint(0, 5, ONE), new PumpPoint(0.002, 0, ONE)));
  static final PumpSet PUMPS =
      new PumpSet(CURVE, 1, 2, PumpSet.Arrangement.PARALLEL, Optional.of(loss()));
  static final LineEnd END =
      new LineEnd(new EndLoss(0.5, 1), Optional.of(BORE), Optional.of(new Screen(0.1, 0.5)));
  static final BasinShape SHAPE =
      new BasinShape(List.of(new BasinShape.Row(-1, 2), new BasinShape.Row(0, 3)));

  private Sound() {}

  private static VelocityHeadLoss loss() {
    return new VelocityHeadLoss(1, 2, BORE);
  }

  static List<Record> laws() {
    return List.of(
        BORE,
        new Lift(1),
        new LimitedLaw(LAW, 1),
        NoLoss.forwardOnly(),
        new OneWayLaw(LAW, OneWayLaw.Direction.FORWARD),
        new SeriesLaw(List.of(LAW)),
        new Shut(),
        new ChannelSection(0.6, 1.5),
        new Manning(0.03),
        new StoneBed(0.06),
        new MonotoneCubic.Knot(0, 0),
        new CloggedLaw(LAW, 0.5),
        new OpenTopLaw(LAW, 0.1),
        new TwoTermFit.Point(0.001, 0.1),
        new TwoTermLoss(1, 1),
        new BackwaterLoss(0.1),
        new CheckValveLoss(0.1, loss()),
        new ValveLoss(ValveTravel.BALL, 0.06),
        new NozzleLoss(BORE, 0.97, 0),
        new PowerLoss(1, 0.001, 2),
        TabulatedLoss.through(List.of(new MonotoneCubic.Knot(0.001, 1))),
        loss(),
        new PumpPoint(0, 5, ONE),
        PUMPS,
        new SkimmerLaw(0.001, 0.05),
        new PowerWeir(1.6, 0.5, BrinkRule.FREE_OVERFALL),
        new TiltedCrest(WEIR, 0.01),
        new VNotchWeir(90),
        new WeirLaw(WEIR),
        new WiderCrest(WEIR, 2),
        WATER);
  }

  private static final Line LINE =
      new Line(
          new LineName("supply"),
          POINT,
          new PointName("fall"),
          Optional.of(BORE),
          List.of(new PlannedPump()),
          END,
          END);

  static List<Record> partsOfNetworks() {
    return List.of(
        POINT,
        new LineName("supply"),
        new Basin(POINT, 0, Optional.of(SHAPE), ONE, ONE, ONE, ONE, ONE, true),
        SHAPE,
        new BasinShape.Row(0, 1),
        new Chamber(POINT, -1, -0.5, ONE, ONE),
        new CheckValve("swing", 0.1, 2, BORE),
        new EndLoss(0.5, 1),
        new Screen(0.1, 0.5),
        new Fall(POINT, 1, WEIR, 0.15, ONE, Optional.of(POINT)),
        new Filter(LAW, 0.2, ONE, 0.1),
        new Fitting("elbow 90", 3, 0.9, BORE),
        new Friction.Roughness(1e-5),
        new Friction.HazenC(150),
        new Friction.DarcyFactor(0.02),
        new Gauge("G1", 0, Optional.of(BORE)),
        new HighPoint(1, Optional.of(BORE)),
        LINE,
        new Placed<>(LINE, 0, new PlannedPump()),
        END,
        new Loss(LAW, Optional.of(BORE)),
        new Nozzle(BORE, 0.97),
        new Outlet(POINT, 1, ONE, Optional.of(new Nozzle(BORE, 0.97)), ONE),
        new PlannedPump(),
        new Pump("P-180", PUMPS),
        new SuctionNeeds(ONE, ONE, ONE),
        new PumpInlet(ONE, Optional.of(BORE), SuctionNeeds.NONE, Optional.of(new Screen(0.1, 0.5))),
        new Run(10, BORE, new Friction.Roughness(1e-5), "2 in"),
        new Setting(WATER, ONE),
        new Skimmer(0.3, ONE, -0.1, 0.36, 0.1),
        new Spill(1, LAW),
        new Tee(POINT, ONE, 0),
        new TerracedPond(4, 3, 1, List.of(new TerracedPond.Shelf(0.4, 0.3))),
        new TerracedPond.Shelf(0.4, 0.3),
        new PipeWall(0.004, 2.8e9, 1e6, List.of(new PipeWall.WhenWarm(23, 1))),
        new PipeWall.WhenWarm(23, 1),
        new Valve("ball valve", new Valve.GivenLoss(1), BORE, true),
        new Valve.GivenLoss(1),
        new Valve.Opening(ValveTravel.BALL, 0.5));
  }
}
