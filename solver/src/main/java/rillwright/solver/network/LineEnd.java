package rillwright.solver.network;

import java.util.Optional;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.minor.VelocityHeadLoss;

/**
 * One end of a line.
 *
 * @param loss its K, by direction
 * @param bore on whose velocity head it is taken; without one it costs nothing
 * @param screen through which water enters the line there, where the file says it
 */
public record LineEnd(EndLoss loss, Optional<Bore> bore, Optional<Screen> screen) {
  public LineEnd {
    Require.given("loss of an end", loss);
    Require.given("bore of an end", bore);
    Require.given("screen of an end", screen);
  }

  /** An end without a screen. */
  public LineEnd(EndLoss loss, Optional<Bore> bore) {
    this(loss, bore, Optional.empty());
  }

  /** The law of the end at which positive flow enters the line. */
  public HeadLaw lawAtFrom() {
    return law(loss.kEntering(), loss.kLeaving());
  }

  /** The law of the end at which positive flow leaves the line. */
  public HeadLaw lawAtTo() {
    return law(loss.kLeaving(), loss.kEntering());
  }

  private HeadLaw law(double kForward, double kBackward) {
    return bore.<HeadLaw>map(b -> new VelocityHeadLoss(kForward, kBackward, b))
        .orElse(NoLoss.bothWays());
  }

  /** The same end with its bore multiplied. */
  public LineEnd narrowed(double factor) {
    return new LineEnd(loss, bore.map(b -> b.times(factor)), screen);
  }
}
