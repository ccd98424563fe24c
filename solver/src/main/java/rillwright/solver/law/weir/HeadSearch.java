package rillwright.solver.law.weir;

/** Finds the head at which a weir passes a flow: Newton's method kept inside a bracket. */
final class HeadSearch {
  private HeadSearch() {}

  static double headAt(Weir weir, double flowM3PerS, double firstGuessM) {
    if (flowM3PerS <= 0) {
      return 0;
    }
    double low = 0;
    double high = Math.max(firstGuessM, 1e-6);
    while (weir.flowAt(high) < flowM3PerS) {
      low = high;
      high *= 2;
    }
    double head = Math.min(Math.max(firstGuessM, low), high);
    for (int step = 0; step < 200; step++) {
      double surplus = weir.flowAt(head) - flowM3PerS;
      if (surplus > 0) {
        high = head;
      } else {
        low = head;
      }
      double next = head - surplus / weir.flowSlopeAt(head);
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - head) <= 1e-16 * head) {
        return next;
      }
      head = next;
    }
    return head;
  }
}
