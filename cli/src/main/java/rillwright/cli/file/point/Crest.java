package rillwright.cli.file.point;

import rillwright.solver.law.weir.Weir;

/**
 * The crest of a fall.
 *
 * @param widthM width that runs wet, m; 0 for a notch whose width is not given
 * @param weir its law
 * @param depthBand by what share a depth over it may be off
 */
public record Crest(double widthM, Weir weir, double depthBand) {}
