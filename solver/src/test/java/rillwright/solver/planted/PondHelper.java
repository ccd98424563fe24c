package rillwright.solver.planted;

/** A name that says nothing. */
record PondHelper() {}
