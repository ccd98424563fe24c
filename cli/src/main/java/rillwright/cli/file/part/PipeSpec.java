package rillwright.cli.file.part;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Friction;
import rillwright.solver.network.PipeWall;

/**
 * What is said in one place about a pipe; each thing may be left to the line.
 *
 * @param clean its inside without deposit
 * @param friction its wall
 * @param material its material in the catalogue
 * @param label what pipe it is, for a person; present with a bore
 * @param wall its wall as that of a pressure pipe, with a bore of the catalogue
 * @param depositM what slime or lime take from the bore, m; empty where nothing is said
 */
public record PipeSpec(
    Optional<Bore> clean,
    Optional<Friction> friction,
    Optional<String> material,
    Optional<String> label,
    Optional<PipeWall> wall,
    OptionalDouble depositM) {
  /** Where nothing is said. */
  public static final PipeSpec NOTHING =
      new PipeSpec(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty());

  /** Its inside, less the deposit; of no more deposit than leaves a bore. */
  public Optional<Bore> bore() {
    return clean.map(bore -> isBlocked() ? bore : new Bore(bore.diameterM() - depositM.orElse(0)));
  }

  /** Whether the deposit leaves no bore. */
  boolean isBlocked() {
    return clean.isPresent() && clean.get().diameterM() <= depositM.orElse(0);
  }

  /** The same with what is not said here as it is said there. */
  PipeSpec or(PipeSpec there) {
    return new PipeSpec(
        clean.or(there::clean),
        friction.or(there::friction),
        material.or(there::material),
        label.or(there::label),
        clean.isPresent() ? wall : there.wall,
        depositM.isPresent() ? depositM : there.depositM);
  }
}
