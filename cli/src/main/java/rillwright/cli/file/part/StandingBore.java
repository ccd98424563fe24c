package rillwright.cli.file.part;

import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.solver.law.Bore;

/** Finds the bore that a part stands in: its own, else that of the pipe around. */
final class StandingBore {
  /** What to go on with after a fault was reported. */
  static final Bore STAND_IN = new Bore(1);

  private final PipeReader pipes;

  StandingBore(PipeReader pipes) {
    this.pipes = pipes;
  }

  /** Its own bore; empty if it says none. */
  Optional<Bore> findOwn(Fields fields, Surroundings around) {
    return pipes.bore(fields, around.material());
  }

  /** The bore; empty if it is not known. */
  Optional<Bore> find(Fields fields, Surroundings around) {
    return findOwn(fields, around).or(around::bore);
  }

  /** The bore; a fault if it is not known. */
  Bore require(Fields fields, Surroundings around) {
    Optional<Bore> bore = find(fields, around);
    if (bore.isEmpty()) {
      fields.fault(
          "its bore is not known; give the line a pipe, or write for example \"inside: 2.067 in\""
              + " here");
    }
    return bore.orElse(STAND_IN);
  }
}
