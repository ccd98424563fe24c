package rillwright.solver.stream;

/** One piece of a stream, in the order the water meets them. */
public sealed interface StreamItem permits Reach, Pool, Step {

  /** The word for its kind in results. */
  String kind();

  /** By how much it falls, m, 0 or more. */
  double dropM();

  /** How water runs in it at a flow, m³/s, 0 or more. */
  ItemState at(double flowM3PerS);
}
