package rillwright.solver.stream;

import java.util.List;

/**
 * A stream at a flow.
 *
 * @param stream which
 * @param flowM3PerS that enters it
 * @param items in order
 */
public record StreamState(Stream stream, double flowM3PerS, List<ItemState> items) {
  public StreamState {
    items = List.copyOf(items);
  }

  static StreamState of(Stream stream, double flowM3PerS) {
    double flow = Math.max(0, flowM3PerS);
    return new StreamState(
        stream, flow, stream.items().stream().map(item -> item.at(flow)).toList());
  }

  /** Water in transit in it: reaches, gravel, and pools above their crests. */
  public Transit transit() {
    double reaches = 0;
    double gravel = 0;
    double pools = 0;
    for (ItemState item : items) {
      boolean pool = item.item() instanceof Pool;
      reaches += pool ? 0 : item.volumeM3();
      pools += pool ? item.volumeM3() : 0;
      gravel += item.gravelM3();
    }
    return new Transit(reaches, gravel, pools, 0, 0, 0);
  }

  /** Water below the crests of its pools, which stays when the pump stops, m³. */
  public double standingM3() {
    return items.stream().mapToDouble(ItemState::standingM3).sum();
  }

  /** Water in the gravel under it that stays there when the pump stops, m³. */
  public double undrainedM3() {
    double sum = 0;
    for (ItemState item : items) {
      if (item.item() instanceof Reach reach && item.flowM3PerS() > 0) {
        sum += reach.gravelAreaM2(item.depthM()) * reach.gravel().undrainedM();
      }
    }
    return sum;
  }

  /** Its wet surface, m². */
  public double wetAreaM2() {
    return items.stream().mapToDouble(ItemState::wetAreaM2).sum();
  }
}
