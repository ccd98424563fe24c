package rillwright.solver.steady;

import java.util.OptionalDouble;

/** How a line runs over its high points. */
public sealed interface Course {

  /** Full, its water nowhere under suction; so does a line without high points. */
  record Full() implements Course {}

  /**
   * Full, under suction at a high point from which the water sweeps the air.
   *
   * @param highPoint its place among the line's parts, counted from 0
   * @param ventedFlowM3PerS what the line would carry, without sign, with air there, m³/s
   */
  record Swept(int highPoint, double ventedFlowM3PerS) implements Course {}

  /**
   * Ending in air at a high point, from where the water falls beside air.
   *
   * @param highPoint its place among the line's parts, counted from 0
   * @param forward whether the water comes from the line's first end
   * @param fullFlowM3PerS what the line would carry, without sign, if it ran full, m³/s
   */
  record Vented(int highPoint, boolean forward, double fullFlowM3PerS) implements Course {}

  /**
   * Carrying nothing, since water does not come over a high point.
   *
   * @param highPoint its place among the line's parts, counted from 0
   * @param reachM how high water comes there with nothing flowing in the line, m; empty if none
   *     comes
   */
  record NotStarted(int highPoint, OptionalDouble reachM) implements Course {}
}
