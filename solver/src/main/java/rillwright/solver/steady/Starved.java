package rillwright.solver.steady;

/**
 * A chamber that has fallen to its intake.
 *
 * @param intakeM level that water running into it sees, m
 * @param inflowM3PerS what comes in, m³/s: what is drawn from it is exactly that
 */
record Starved(double intakeM, double inflowM3PerS) {

  Starved withInflow(double newInflowM3PerS) {
    return new Starved(intakeM, newInflowM3PerS);
  }
}
