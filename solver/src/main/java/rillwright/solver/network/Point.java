package rillwright.solver.network;

import java.util.OptionalDouble;

/** Where water has a level, where pipes meet or where water leaves. */
public sealed interface Point permits Basin, Chamber, Tee, Fall, Outlet {

  /**
   * Up to this share below a target it counts as given: less than anyone sees (common practice).
   */
  double UNSEEN_SHARE = 0.001;

  /** Its name, unique among points. */
  PointName name();

  /** The word for its kind in project files and results. */
  String kind();

  /** The head at which the point is held whatever flows, m; empty where the balance finds it. */
  OptionalDouble heldHeadM();

  /** Where the point lets water out of the network, by its own law; empty where it does not. */
  default java.util.Optional<Spill> spill() {
    return java.util.Optional.empty();
  }

  /** Whether water leaves the network here: over a crest or at a pipe's end, be it under water. */
  default boolean isWayOut() {
    return spill().isPresent();
  }

  /** Fixed flow taken out of the network here, m³/s; negative puts in. */
  default double drawM3PerS() {
    return 0;
  }

  /** The target flow out of the network here, m³/s, where there is a target. */
  default OptionalDouble targetM3PerS() {
    return OptionalDouble.empty();
  }

  /**
   * Whether a flow out of the network here, m³/s, misses the target: by more than a thousandth of
   * it, less than anyone sees. A flow that runs in misses any target; without a target nothing is
   * missed.
   */
  default boolean isMissedBy(double flowM3PerS) {
    double target = targetM3PerS().orElse(0);
    return target > 0 && flowM3PerS < target * (1 - UNSEEN_SHARE);
  }

  /** What a pipe's end in this point's water costs unless the file says otherwise. */
  EndLoss usualEndLoss();
}
