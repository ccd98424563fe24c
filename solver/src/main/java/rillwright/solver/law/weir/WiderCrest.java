package rillwright.solver.law.weir;

import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;

/**
 * A crest that runs wet over another width than it was drawn with: Q(h) = factor · Q_drawn(h).
 *
 * <p>Source: the flow over a crest is proportional to its width, as in every weir formula here.
 *
 * @param drawn the crest as drawn
 * @param factor width that runs wet by width drawn, greater than 0
 */
public record WiderCrest(Weir drawn, double factor) implements Weir {
  public WiderCrest {
    Require.given("crest as drawn", drawn);
    Require.positive("factor of the width", factor, "");
  }

  @Override
  public double flowAt(double headM) {
    return factor * drawn.flowAt(headM);
  }

  @Override
  public double flowSlopeAt(double headM) {
    return factor * drawn.flowSlopeAt(headM);
  }

  @Override
  public double headAt(double flowM3PerS) {
    return drawn.headAt(flowM3PerS / factor);
  }

  @Override
  public OptionalDouble brinkDepthAt(double flowM3PerS) {
    return drawn.brinkDepthAt(flowM3PerS / factor);
  }

  @Override
  public double rulerHeadAt(double flowM3PerS) {
    return drawn.rulerHeadAt(flowM3PerS / factor);
  }

  @Override
  public OptionalDouble crestWidthM() {
    return drawn.crestWidthM().stream().map(width -> factor * width).findFirst();
  }
}
