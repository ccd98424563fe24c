package rillwright.solver.invariant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static rillwright.solver.invariant.Sound.BORE;
import static rillwright.solver.invariant.Sound.CURVE;
import static rillwright.solver.invariant.Sound.LAW;
import static rillwright.solver.invariant.Sound.PUMPS;
import static rillwright.solver.invariant.Sound.WEIR;

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
import rillwright.solver.water.Water;

/** What is refused, and what is said then: the value, and what it must be. */
class RefusedLawsTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final OptionalDouble LESS = OptionalDouble.of(-0.5);

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
            "least flow is -1 m³/s; it must be 0 or negative infinity", does(() -> new NoLoss(-1))),
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
        arguments(
            "open share is 1.1; it must be from 0 to 1", does(() -> new CloggedLaw(LAW, 1.1))),
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
        arguments("size of stones is 0 m; it must be greater than 0", does(() -> new StoneBed(0))),
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

  private static Executable does(Executable construction) {
    return construction;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("laws")
  void saysWhatTheValueIsAndWhatItMustBe(String message, Executable construction) {
    Throwable refusal = assertThrows(IllegalArgumentException.class, construction);
    assertEquals(message, refusal.getMessage());
  }
}
