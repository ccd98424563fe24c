package rillwright.solver.planted.two;

import rillwright.solver.planted.one.There;

/** The other half of it. */
public record Back(There there) {}
