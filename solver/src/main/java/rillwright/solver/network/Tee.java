package rillwright.solver.network;

import java.util.OptionalDouble;

/**
 * Where pipes meet, closed.
 *
 * @param elevationM elevation of its middle, m, where known: for its pressure
 * @param drawM3PerS fixed flow taken out, m³/s; negative puts in
 */
public record Tee(PointName name, OptionalDouble elevationM, double drawM3PerS) implements Point {

  @Override
  public String kind() {
    return "tee";
  }

  @Override
  public OptionalDouble heldHeadM() {
    return OptionalDouble.empty();
  }

  @Override
  public EndLoss usualEndLoss() {
    return EndLoss.NONE;
  }
}
