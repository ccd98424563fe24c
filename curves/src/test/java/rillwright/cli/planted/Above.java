package rillwright.cli.planted;

/** Stands in the module above. */
public record Above() {}
