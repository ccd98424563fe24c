package rillwright.solver.study.diagnosis.evidence;

import java.util.OptionalDouble;

/** What is believed of one cause when something was read, supposed that it is at work. */
public interface Belief {

  /** Natural logarithm of how likely the readings are; negative infinity if they cannot be. */
  double logEvidence();

  /** How large it is on the average; empty without sizes. */
  OptionalDouble size();

  /** Which of several it is, most likely; empty if it is no choice. */
  default java.util.Optional<String> choice() {
    return java.util.Optional.empty();
  }

  /** What a readable is on the average; empty where nothing tells it. */
  OptionalDouble mean(int readable);

  /** Where the readings of a readable lie, but for a trifle; empty where nothing tells it. */
  java.util.Optional<rillwright.solver.study.diagnosis.reading.Span> span(int readable);

  /** Adds how likely each value on a grid is, as read; the grid's sum is brought to 1 later. */
  void addDensity(int readable, Grid grid);
}
