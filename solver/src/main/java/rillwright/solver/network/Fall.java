package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.weir.Weir;
import rillwright.solver.law.weir.WeirLaw;

/**
 * A spillway: water rises to the crest and pours over a weir.
 *
 * @param crestM level of the crest, m
 * @param widthM width that runs wet, m, greater than 0
 * @param weir its law
 * @param depthBand by how much a depth over it may be off, share: 0.15 for a made lip, 0.30 for
 *     natural rock
 * @param wantM3PerS wished flow, m³/s, where there is a wish
 * @param returnsTo the basin that it pours into, where the file says so
 */
public record Fall(
    PointName name,
    double crestM,
    double widthM,
    Weir weir,
    double depthBand,
    OptionalDouble wantM3PerS,
    Optional<PointName> returnsTo)
    implements Point {

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

  /** The same fall with its crest at another level, m, and over it another law. */
  public Fall withCrest(double newCrestM, Weir newWeir) {
    return new Fall(name, newCrestM, widthM, newWeir, depthBand, wantM3PerS, returnsTo);
  }
}
