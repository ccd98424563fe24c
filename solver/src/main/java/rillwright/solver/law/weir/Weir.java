package rillwright.solver.law.weir;

import java.util.OptionalDouble;

/**
 * A crest over which water pours freely. The head is measured upstream of the crest, three or four
 * heads back.
 *
 * <p>Flow rises with head, from none at none.
 */
public sealed interface Weir permits PowerWeir, ThinPlateWeir, VNotchWeir, WiderCrest, TiltedCrest {

  /** Flow over the crest, m³/s, at a head upstream of it, m, 0 or more. */
  double flowAt(double headM);

  /** dQ/dh, m²/s, at a head, m, 0 or more. */
  double flowSlopeAt(double headM);

  /** Head upstream of the crest, m, at a flow, m³/s, 0 or more. */
  double headAt(double flowM3PerS);

  /** Thickness of the sheet at the brink, m, at a flow, m³/s; empty where no such rule is known. */
  OptionalDouble brinkDepthAt(double flowM3PerS);

  /** Head that a ruler in the middle of the crest shows, m, at a flow, m³/s, 0 or more. */
  default double rulerHeadAt(double flowM3PerS) {
    return headAt(flowM3PerS);
  }

  /** Width along which water runs side by side, m; empty for a notch, which has no crest. */
  OptionalDouble crestWidthM();
}
