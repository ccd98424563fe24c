package rillwright.curves.trace;

/**
 * A point of a curve.
 *
 * @param flowM3PerS flow, m³/s
 * @param headM head, m
 */
public record CurvePoint(double flowM3PerS, double headM) {}
