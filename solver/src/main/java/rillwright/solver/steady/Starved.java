package rillwright.solver.steady;

import java.util.Set;
import rillwright.solver.network.LineName;

/**
 * A chamber that has fallen to its intake.
 *
 * @param intakeM level that lines entering it see, m
 * @param entering the lines that bring it water; copied
 * @param inflowM3PerS what they bring, m³/s: lines leaving it take exactly that
 */
record Starved(double intakeM, Set<LineName> entering, double inflowM3PerS) {
  Starved {
    entering = Set.copyOf(entering);
  }

  Starved withInflow(double newInflowM3PerS) {
    return new Starved(intakeM, entering, newInflowM3PerS);
  }
}
