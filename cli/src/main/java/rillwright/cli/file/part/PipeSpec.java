package rillwright.cli.file.part;

import java.util.Optional;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Friction;

/**
 * What is said in one place about a pipe; each thing may be left to the line.
 *
 * @param bore its inside
 * @param friction its wall
 * @param material its material in the catalogue
 * @param label what pipe it is, for a person; present with a bore
 */
public record PipeSpec(
    Optional<Bore> bore,
    Optional<Friction> friction,
    Optional<String> material,
    Optional<String> label) {
  /** Where nothing is said. */
  public static final PipeSpec NOTHING =
      new PipeSpec(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
