package rillwright.solver.planted;

import rillwright.curves.unit.planted.UnitThatDraws;

/** A class of the solver that looks up. */
public record SolverKnowsCurves(UnitThatDraws unit) {}
