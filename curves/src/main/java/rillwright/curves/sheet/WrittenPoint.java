package rillwright.curves.sheet;

import rillwright.solver.law.pump.PumpPoint;

/**
 * A point of a pump's curve as somebody wrote it.
 *
 * @param name what messages call it: {@code line 3}, {@code point 2}
 * @param flow as written
 * @param head as written
 * @param power as written; empty without one
 * @param point its values
 */
public record WrittenPoint(String name, String flow, String head, String power, PumpPoint point) {}
