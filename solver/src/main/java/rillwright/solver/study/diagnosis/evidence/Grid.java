package rillwright.solver.study.diagnosis.evidence;

/** Values at even steps and how likely each is. */
public final class Grid {
  /** How far an error is followed, in standard deviations. */
  private static final double REACH = 8;

  private final double first;
  private final double step;
  final double[] mass;

  public Grid(double first, double last, int count) {
    this.first = first;
    this.step = (last - first) / (count - 1);
    this.mass = new double[count];
  }

  /** The cell in which a value lies; the nearest if it lies beyond. */
  public int cellOf(double value) {
    long cell = Math.round((value - first) / step);
    return (int) Math.max(0, Math.min(mass.length - 1, cell));
  }

  public double valueOf(int cell) {
    return first + cell * step;
  }

  /** Adds a weight spread about a cell by errors of a standard deviation. */
  public void spread(int cell, double weight, double deviation) {
    double cells = deviation / step;
    int reach = (int) Math.ceil(REACH * cells);
    double height = weight / cells;
    for (int k = Math.max(0, cell - reach); k <= Math.min(mass.length - 1, cell + reach); k++) {
      mass[k] += height * StudentT.density((k - cell) / cells);
    }
  }

  /** Adds a weight spread evenly from one value to another. */
  public void spreadEvenly(double from, double to, double weight) {
    int low = cellOf(from);
    int high = cellOf(to);
    for (int k = low; k <= high; k++) {
      mass[k] += weight / (high - low + 1);
    }
  }

  /** Brings the sum to 1; false if there is nothing. */
  public boolean normalise() {
    double sum = 0;
    for (double m : mass) {
      sum += m;
    }
    if (!(sum > 0)) {
      return false;
    }
    for (int k = 0; k < mass.length; k++) {
      mass[k] /= sum;
    }
    return true;
  }
}
