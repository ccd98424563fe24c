package rillwright.curves.planted;

/** Stands in a module above the solver. */
public record Above() {}
