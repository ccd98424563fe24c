package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.weir.Weir;
import rillwright.solver.law.weir.WeirLaw;

/**
 * A spillway: water rises to the crest and pours over a weir.
 *
 * @param crestM level of the crest, m
 * @param weir its law, and how wide it runs wet
 * @param depthBand by how much a depth over it may be off, share: 0.15 for a made lip, 0.30 for
 *     natural rock
 * @param targetM3PerS target flow, m³/s, where there is a target
 * @param returnsTo the basin that it pours into, where the file says so
 */
public record Fall(
    PointName name,
    double crestM,
    Weir weir,
    double depthBand,
    OptionalDouble targetM3PerS,
    Optional<PointName> returnsTo)
    implements Point {
  public Fall {
    Require.given("name of a fall", name);
    Require.finite("crest of a fall", crestM, "m");
    Require.given("weir of a fall", weir);
    Require.between("band of the depth over a fall", depthBand, 0, 1, "");
    Require.atLeast("target flow", targetM3PerS, 0, "m³/s");
    Require.given("basin a fall returns to", returnsTo);
  }

  @Override
  public String kind() {
    return "fall";
  }

  @Override
  public OptionalDouble heldHeadM() {
    return OptionalDouble.empty();
  }

  @Override
  public Optional<Spill> spill() {
    return Optional.of(new Spill(crestM, new WeirLaw(weir)));
  }

  @Override
  public EndLoss usualEndLoss() {
    return EndLoss.OPEN_WATER;
  }

  /** Width that runs wet, m; empty at a notch. */
  public OptionalDouble widthM() {
    return weir.crestWidthM();
  }

  /** The same fall with its crest at another level, m, and over it another law. */
  public Fall withCrest(double newCrestM, Weir newWeir) {
    return new Fall(name, newCrestM, newWeir, depthBand, targetM3PerS, returnsTo);
  }
}
