package rillwright.cli.report.weak;

import rillwright.cli.report.units.ShownUnits;

/** How the size of a cause is told to a crew. */
public enum SizeWords {
  NONE {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return "";
    }
  },
  PASSES {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return "passes " + units.flow(size * pumpFlowM3PerS);
    }
  },
  SHARE_CLOGGED {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return units.share(size) + " clogged";
    }
  },
  LOSS {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return "adds a loss of K " + units.amount(size);
    }
  },
  HEAD_LEFT {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return "gives " + units.share(size) + " of its head";
    }
  },
  SPEED_LEFT {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return "at " + units.share(size) + " of its speed";
    }
  },
  BORE_LEFT {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return units.share(size) + " of the bore left";
    }
  },
  HEAD_ADDED {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return "holds the water " + units.depth(size) + " higher";
    }
  },
  HIGHER {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return units.head(size) + " higher";
    }
  },
  LOST {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return "takes " + units.flow(size * pumpFlowM3PerS);
    }
  },
  DEPTH_GONE {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return units.share(size) + " of the depth over the sill gone";
    }
  },
  SHARE_LOST {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return units.share(size) + " lost on the way";
    }
  },
  TIMES_AS_WIDE {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return units.number(Math.round(10 * size) / 10.0) + " times as wide";
    }
  },
  LOW_END {
    @Override
    public String of(double size, double pumpFlowM3PerS, ShownUnits units) {
      return "one end " + units.fineDepth(size) + " low";
    }
  };

  /**
   * A few words: "passes 2,100 gph".
   *
   * @param pumpFlowM3PerS what the pumps of its circuit move as built, m³/s
   */
  public abstract String of(double size, double pumpFlowM3PerS, ShownUnits units);
}
