package rillwright.cli.study.mend.kind;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Step;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Valve;

/** How finely a valve is set: as a hand can or, where that is too coarse, as computed. */
enum Handle {
  AS_A_HAND_SETS_IT {
    @Override
    double rounded(double value, double step) {
      return step * Math.rint(value / step);
    }

    @Override
    double rounded(double lossCoefficient) {
      return new BigDecimal(lossCoefficient).round(new MathContext(3)).doubleValue();
    }
  },
  EXACTLY {
    @Override
    double rounded(double value, double step) {
      return value;
    }

    @Override
    double rounded(double lossCoefficient) {
      return lossCoefficient;
    }
  };

  private static final double QUARTER_TURN = 90;
  private static final double PERCENT = 100;
  private static final double A_HUNDREDTH = 0.01;

  /** A value on a step's multiple. */
  abstract double rounded(double value, double step);

  /** A loss coefficient in so many figures. */
  abstract double rounded(double lossCoefficient);

  /**
   * The setting of a valve.
   *
   * @param valves of its line
   * @param index its place among the line's parts
   * @param set so
   */
  Step step(List<Placed<Valve>> valves, int index, Valve set) {
    Placed<Valve> placed =
        valves.stream().filter(valve -> valve.index() == index).findFirst().orElseThrow();
    String line = placed.line().name().value();
    if (set.loss().opening().isEmpty()) {
      double k = rounded(set.loss().lossCoefficient());
      return step(Action.THROTTLE, line, set, k, Addresses.ofPart(placed, "k", text(k)));
    }
    double open = set.loss().opening().getAsDouble();
    OptionalDouble degrees = set.loss().degreesFromOpen();
    if (degrees.isEmpty()) {
      double share = rounded(open, A_HUNDREDTH);
      return step(Action.OPEN_VALVE, line, set, share, opened(placed, share));
    }
    double turned = rounded(ValveTravel.degreesFromOpen(open), 1);
    double share = 1 - turned / QUARTER_TURN;
    return step(Action.TURN_VALVE, line, set, turned, opened(placed, share));
  }

  private static String opened(Placed<Valve> placed, double share) {
    return Addresses.ofPart(placed, "open", text(PERCENT * share) + " %");
  }

  private static String text(double number) {
    return new BigDecimal(number, new MathContext(9)).stripTrailingZeros().toPlainString();
  }

  private static Step step(Action action, String line, Valve valve, double figure, String set) {
    return new Step(action, line, valve.label(), figure, "", List.of(set), Step.NOTHING);
  }
}
