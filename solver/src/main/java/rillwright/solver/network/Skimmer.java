package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.skimmer.SkimmerLaw;

/**
 * A skimmer's mouth; its line begins at a basin.
 *
 * @param widthM width of the mouth, m, greater than 0
 * @param heightM height of the mouth, m, where known; not part of the law
 * @param sillM level of the sill, m
 * @param dischargeCoefficient dimensionless, greater than 0
 * @param clogged share of the mouth that is clogged, 0 to 1
 */
public record Skimmer(
    double widthM,
    OptionalDouble heightM,
    double sillM,
    double dischargeCoefficient,
    double clogged)
    implements Part {
  public Skimmer {
    Require.positive("width of a skimmer", widthM, "m");
    Require.positive("height of a skimmer", heightM, "m");
    Require.finite("sill of a skimmer", sillM, "m");
    Require.positive("discharge coefficient", dischargeCoefficient, "");
    Require.between("clogged share of a skimmer", clogged, 0, 1, "");
  }

  /** Discharge coefficient with a floating door; common practice, no source. */
  public static final double WITH_DOOR = 0.36;

  /** Discharge coefficient without a door; common practice, no source. */
  public static final double WITHOUT_DOOR = 0.6;

  @Override
  public String kind() {
    return "skimmer";
  }

  @Override
  public boolean coversChangeOfBore() {
    return true;
  }

  @Override
  public Optional<Bore> bore() {
    return Optional.empty();
  }

  @Override
  public SkimmerLaw law(Setting setting) {
    double level =
        setting
            .levelBeforeM()
            .orElseThrow(() -> new IllegalStateException("a skimmer's line must begin at a basin"));
    return SkimmerLaw.ofMouth(dischargeCoefficient, (1 - clogged) * widthM, level - sillM);
  }

  /** The same mouth with another share clogged. */
  public Skimmer withClogged(double share) {
    return new Skimmer(widthM, heightM, sillM, dischargeCoefficient, share);
  }

  /** Level of the upper edge of its mouth, m; empty if its height is not known. */
  public OptionalDouble mouthTopM() {
    return heightM.isPresent() ? OptionalDouble.of(sillM + heightM.getAsDouble()) : heightM;
  }

  /**
   * Level of the open water at which it passes just a flow, m, however low it stands downstream.
   */
  public double levelToPassM(double flowM3PerS) {
    if (flowM3PerS <= 0) {
      return sillM;
    }
    double atOneMetre =
        SkimmerLaw.ofMouth(dischargeCoefficient, (1 - clogged) * widthM, 1).freeFlowM3PerS();
    return sillM + Math.pow(flowM3PerS / atOneMetre, 2.0 / 3);
  }
}
