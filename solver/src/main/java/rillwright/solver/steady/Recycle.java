package rillwright.solver.steady;

/**
 * The search for a flow that is drawn from a place where some of it comes back: the flow drawn at
 * which as much comes in. The more is drawn, the more comes in, but by less than what more was
 * drawn, so that the surplus (what comes in less what is drawn) falls as more is drawn.
 *
 * <p>Secants until one flow is known to be too little and one too much, then the rule of false
 * position between them, the Illinois way: the surplus of an end that stays is halved.
 *
 * <p>Sources: Wegstein, J. H. (1958), "Accelerating convergence of iterative processes",
 * Communications of the ACM 1(6), 9–13; Dowell, M. and Jarratt, P. (1971), "A modified regula falsi
 * method for computing the root of an equation", BIT 11, 168–174 (both from memory).
 */
final class Recycle {
  /** The most of what is drawn in addition that is taken to come back. */
  private static final double MOST_COMES_BACK = 1 - 1e-6;

  private double tooLittle = Double.NaN;
  private double surplus;
  private double tooMuch = Double.NaN;
  private double lack;
  private double drawnBefore = Double.NaN;
  private double cameBefore;

  /** Says that a flow, m³/s, cannot be all that is drawn. */
  void refuse(double drawn) {
    tooLittle = drawn;
    surplus = Double.isNaN(tooMuch) ? 0 : lack;
  }

  /**
   * The next flow to draw, m³/s.
   *
   * @param drawn what was drawn last, m³/s
   * @param came what came in then, m³/s
   */
  double next(double drawn, double came) {
    if (came == drawn) {
      return drawn;
    }
    narrow(drawn, came - drawn);
    double back = (came - cameBefore) / (drawn - drawnBefore);
    drawnBefore = drawn;
    cameBefore = came;
    double between = tooLittle + (tooMuch - tooLittle) * (surplus / (surplus + lack));
    if (between > tooLittle && between < tooMuch) {
      return between;
    }
    double limited = back > 0 ? Math.min(MOST_COMES_BACK, back) : 0;
    return Math.max(0, drawn + (came - drawn) / (1 - limited));
  }

  private void narrow(double drawn, double difference) {
    boolean bracketed = tooLittle < tooMuch;
    if (bracketed && (drawn < tooLittle || drawn > tooMuch)) {
      // Another chamber has changed what comes in here.
      tooLittle = Double.NaN;
      tooMuch = Double.NaN;
    }
    if (difference > 0) {
      lack = drawnBefore == tooLittle ? lack / 2 : lack;
      tooLittle = drawn;
      surplus = difference;
    } else {
      surplus = drawnBefore == tooMuch ? surplus / 2 : surplus;
      tooMuch = drawn;
      lack = -difference;
    }
  }
}
