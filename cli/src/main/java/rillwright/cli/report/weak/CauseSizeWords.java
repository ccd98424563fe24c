package rillwright.cli.report.weak;

import rillwright.cli.report.HandleWords;
import rillwright.cli.report.units.ShownUnits;

/** How the size of a cause is shown to a crew. */
public enum CauseSizeWords {
  NONE,
  PASSES,
  SHARE_CLOGGED,
  LOSS,
  HEAD_LEFT,
  SPEED_LEFT,
  BORE_LEFT,
  HEAD_ADDED,
  HIGHER,
  LOST,
  DEPTH_GONE,
  SHARE_LOST,
  TIMES_AS_WIDE,
  LOW_END,
  TIMES_THE_HEAD,
  BEHIND;

  /**
   * A few words: "passes 2,100 gph".
   *
   * @param pumpFlowM3PerS what the pumps of its circuit move as built, m³/s
   */
  public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
    return switch (this) {
      case NONE -> "";
      case PASSES -> "passes " + units.flow(size * pumpFlowM3PerS);
      case SHARE_CLOGGED -> "is " + units.share(size) + " clogged";
      case LOSS -> "acts like a ball valve " + HandleWords.turned(size);
      case HEAD_LEFT -> "gives " + units.share(size) + " of its head";
      case SPEED_LEFT -> "runs at " + units.share(size) + " of its speed";
      case BORE_LEFT -> "has " + units.share(size) + " of its bore left";
      case HEAD_ADDED -> "holds the water " + units.depth(size) + " higher";
      case HIGHER -> "is " + units.head(size) + " higher";
      case LOST -> "takes " + units.flow(size * pumpFlowM3PerS);
      case DEPTH_GONE -> "has lost " + units.share(size) + " of its depth over the sill";
      case SHARE_LOST -> "loses " + units.share(size) + " on the way";
      case TIMES_AS_WIDE -> "is " + units.number(Math.round(10 * size) / 10.0) + " times as wide";
      case TIMES_THE_HEAD -> "takes " + units.computed(size) + " times its head";
      case BEHIND -> "loses " + units.share(size) + " behind them";
      case LOW_END -> "has one end " + units.fineDepth(size) + " low";
    };
  }
}
