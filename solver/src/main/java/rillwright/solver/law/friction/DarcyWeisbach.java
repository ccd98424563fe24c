package rillwright.solver.law.friction;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.Gravity;

/**
 * Friction of a full pipe at every flow, h = f (L/D) V²/2g: laminar f = 64/Re up to Re 2000,
 * Colebrook–White from Re 4000, and between them the one cubic in flow that meets both in loss and
 * slope.
 *
 * <p>Source: Weisbach, J. (1845), Lehrbuch der Ingenieur- und Maschinen-Mechanik; the laminar law
 * is Hagen and Poiseuille's (1839–1841); both from memory. The cubic is ours: published charts
 * leave the range open. It rises throughout for roughness up to 5 % of the bore.
 */
public final class DarcyWeisbach implements PipeFriction {
  private static final double LAMINAR_UP_TO = 2000;
  private static final double TURBULENT_FROM = 4000;

  private final double viscosityM2PerS;
  private final Bore bore;
  private final double relativeRoughness;

  /** Head loss is this, s²/m⁵, times f Q²; all below is about f Q². */
  private final double lossPerFactor;

  private final double laminarSlope;
  private final double laminarFlow;
  private final double turbulentFlow;
  private final double laminarEnd;
  private final double turbulentStart;
  private final double turbulentStartSlope;

  /**
   * The law of a pipe.
   *
   * @param lengthM length, m, 0 or more
   * @param bore inside of the pipe
   * @param roughnessM absolute roughness, m, 0 to 5 % of the bore
   * @param viscosityM2PerS kinematic viscosity, m²/s, greater than 0
   */
  public DarcyWeisbach(double lengthM, Bore bore, double roughnessM, double viscosityM2PerS) {
    Require.atLeast("length", lengthM, 0, "m");
    Require.given("bore", bore);
    Require.atLeast("roughness", roughnessM, 0, "m");
    Require.positive("viscosity", viscosityM2PerS, "m²/s");
    this.viscosityM2PerS = viscosityM2PerS;
    this.bore = bore;
    this.relativeRoughness = roughnessM / bore.diameterM();
    double area = bore.areaM2();
    this.lossPerFactor = lengthM / bore.diameterM() / (2 * Gravity.STANDARD_M_PER_S2 * area * area);
    double flowPerReynolds = viscosityM2PerS * area / bore.diameterM();
    this.laminarFlow = LAMINAR_UP_TO * flowPerReynolds;
    this.turbulentFlow = TURBULENT_FROM * flowPerReynolds;
    this.laminarSlope = 64 * flowPerReynolds;
    this.laminarEnd = laminarSlope * laminarFlow;
    this.turbulentStart = turbulent(turbulentFlow);
    this.turbulentStartSlope = turbulentSlope(turbulentFlow);
  }

  @Override
  public double headLossAt(double flowM3PerS) {
    return Math.copySign(lossPerFactor * factorTimesSquareAt(Math.abs(flowM3PerS)), flowM3PerS);
  }

  /** f Q², m⁶/s². */
  private double factorTimesSquareAt(double flow) {
    if (flow <= laminarFlow) {
      return laminarSlope * flow;
    }
    if (flow >= turbulentFlow) {
      return turbulent(flow);
    }
    double h = turbulentFlow - laminarFlow;
    double t = (flow - laminarFlow) / h;
    double u = 1 - t;
    return u * u * (1 + 2 * t) * laminarEnd
        + t * u * u * h * laminarSlope
        + t * t * (3 - 2 * t) * turbulentStart
        - t * t * u * h * turbulentStartSlope;
  }

  @Override
  public double slopeAt(double flowM3PerS) {
    return lossPerFactor * factorTimesSquareSlopeAt(Math.abs(flowM3PerS));
  }

  private double factorTimesSquareSlopeAt(double flow) {
    if (flow <= laminarFlow) {
      return laminarSlope;
    }
    if (flow >= turbulentFlow) {
      return turbulentSlope(flow);
    }
    double h = turbulentFlow - laminarFlow;
    double t = (flow - laminarFlow) / h;
    return 6 * t * (1 - t) * (turbulentStart - laminarEnd) / h
        + (1 - t) * (1 - 3 * t) * laminarSlope
        + t * (3 * t - 2) * turbulentStartSlope;
  }

  private double turbulent(double flow) {
    return ColebrookWhite.darcyFrictionFactor(relativeRoughness, reynoldsAt(flow)) * flow * flow;
  }

  private double turbulentSlope(double flow) {
    double reynolds = reynoldsAt(flow);
    ColebrookWhite.Factor factor = ColebrookWhite.factorAt(relativeRoughness, reynolds);
    return flow * (2 * factor.darcyFrictionFactor() + reynolds * factor.slopeByReynolds());
  }

  private double reynoldsAt(double flow) {
    return Math.abs(bore.velocityAt(flow)) * bore.diameterM() / viscosityM2PerS;
  }

  @Override
  public double darcyFrictionFactorAt(double flowM3PerS) {
    double flow = Math.abs(flowM3PerS);
    if (flow >= turbulentFlow) {
      return ColebrookWhite.darcyFrictionFactor(relativeRoughness, reynoldsAt(flow));
    }
    if (flow <= laminarFlow) {
      return 64 / reynoldsAt(flow);
    }
    return factorTimesSquareAt(flow) / (flow * flow);
  }
}
