package rillwright.solver.planted.one;

import java.util.Optional;
import rillwright.solver.planted.two.Back;

/** Half of a circle of two packages. */
public record There(Optional<Back> back) {
  /** Where it goes. */
  public Back goes() {
    return new Back(this);
  }
}
