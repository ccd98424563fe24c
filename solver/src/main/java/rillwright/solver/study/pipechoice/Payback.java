package rillwright.solver.study.pipechoice;

import java.util.OptionalDouble;
import rillwright.solver.trial.RunningTerms;

/**
 * After how many years what is dearer to lay has paid for itself by what it saves in electricity.
 * Asked only between two that each have their own pump or speed: with one and the same, larger pipe
 * adds flow and saves nothing.
 *
 * @param kind whether it does
 * @param years what is paid more over what is saved a year; present only if it is paid back
 */
public record Payback(Kind kind, OptionalDouble years) {

  /** What can be said. */
  public enum Kind {
    /** It is paid back. */
    PAID_BACK,
    /** It costs no more to begin with and saves: paid back at once. */
    AT_ONCE,
    /** It saves nothing. */
    NEVER,
    /** One and the same pump: it adds flow and saves nothing. */
    SAME_PUMP,
    /** Prices or powers are not known, or one of the two does not give the falls their targets. */
    UNKNOWN
  }

  /** The payback of a dearer pipe against a cheaper one. */
  public static Payback of(RatedPipe cheaper, RatedPipe dearer, RunningTerms terms) {
    if (!cheaper.meetsTargets() || !dearer.meetsTargets()) {
      return new Payback(Kind.UNKNOWN, OptionalDouble.empty());
    }
    if (cheaper.hasThePumpOf(dearer)) {
      return new Payback(Kind.SAME_PUMP, OptionalDouble.empty());
    }
    boolean known =
        cheaper.option().materialCost().isPresent()
            && dearer.option().materialCost().isPresent()
            && cheaper.pumpPriceCompares(dearer)
            && cheaper.pump().energyKwhPerYear().isPresent()
            && dearer.pump().energyKwhPerYear().isPresent()
            && terms.pricePerKwh().isPresent();
    if (!known) {
      return new Payback(Kind.UNKNOWN, OptionalDouble.empty());
    }
    double more = dearer.paidOnce() - cheaper.paidOnce();
    double saved =
        terms.pricePerKwh().getAsDouble()
            * (cheaper.pump().energyKwhPerYear().getAsDouble()
                - dearer.pump().energyKwhPerYear().getAsDouble());
    if (saved <= 0) {
      return new Payback(Kind.NEVER, OptionalDouble.empty());
    }
    return more <= 0
        ? new Payback(Kind.AT_ONCE, OptionalDouble.of(0))
        : new Payback(Kind.PAID_BACK, OptionalDouble.of(more / saved));
  }
}
