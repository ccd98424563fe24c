package rillwright.solver.study.diagnosis.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.evidence.Likelihood;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.evidence.StudentT;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * Two faults at the sizes that explain some readings best, both computed through together: Newton's
 * method on the squares of what the readings are off, with bounds (Gauss and Newton, damped as by
 * Levenberg and Marquardt; textbook methods). Sizes are shares of their ranges.
 */
public final class PairFit {
  private static final int MOST_STEPS = 7;
  private static final double DIFFERENCE = 0.01;
  private static final double LITTLE = 0.02;
  private static final double FIRST_DAMPING = 0.1;
  private static final double LESS = 0.2;
  private static final double MORE = 8;

  /** Sizes are known to no less than this without any reading: those of an even range are. */
  private static final double PRIOR_DEVIATION = 0.29;

  private final Scope scope;
  private final Likelihood likelihood;
  private final Set<When> states;
  private final Cause one;
  private final Cause other;

  /** The sizes: those of a cause without any stay where they are. */
  private final double[] at;

  private final int[] free;
  private double[] off;
  private double log;
  private double[][] slopes;

  private PairFit(Scope scope, Likelihood likelihood, PairScreen.Candidate start) {
    this.scope = scope;
    this.likelihood = likelihood;
    this.states = scope.statesOf(likelihood.readings());
    this.one = start.one().cause();
    this.other = start.other().cause();
    this.at = new double[] {start.atOne(), start.atOther()};
    List<Integer> sized = new ArrayList<>();
    if (one.sizes().isPresent()) {
      sized.add(0);
    }
    if (other.sizes().isPresent()) {
      sized.add(1);
    }
    this.free = sized.stream().mapToInt(i -> i).toArray();
    move(at);
  }

  /** Fits a pair from where it was screened. */
  public static PairFit of(Scope scope, Likelihood likelihood, PairScreen.Candidate start) {
    PairFit fit = new PairFit(scope, likelihood, start);
    fit.improve();
    return fit;
  }

  public double[] at() {
    return at.clone();
  }

  /** Which of the two sizes can change. */
  public int[] free() {
    return free.clone();
  }

  /** Logarithm of the likelihood there. */
  public double log() {
    return log;
  }

  /** The readings everywhere and in all states with both at sizes. */
  public double[] everything(double[] sizes) {
    return scope.predict(effects(sizes));
  }

  private List<Scope.Sized> effects(double[] sizes) {
    return List.of(sized(one, sizes[0]), sized(other, sizes[1]));
  }

  private static Scope.Sized sized(Cause cause, double share) {
    double size = cause.sizes().map(range -> range.at(share)).orElse(share);
    return new Scope.Sized(cause.effect().orElseThrow(), size);
  }

  private double[] predicted(double[] sizes) {
    return scope.predict(effects(sizes), states);
  }

  private double[] off(double[] values) {
    double[] result = new double[likelihood.count()];
    for (int r = 0; r < result.length; r++) {
      result[r] = likelihood.misfit(r, values[likelihood.index(r)]);
    }
    return result;
  }

  private boolean move(double[] to) {
    double[] values = predicted(to);
    double better = likelihood.log(values);
    if (off != null && !(better > log)) {
      return false;
    }
    off = off(values);
    log = better;
    System.arraycopy(to, 0, at, 0, at.length);
    return true;
  }

  private void improve() {
    double damping = FIRST_DAMPING;
    slopes = slopes();
    for (int step = 0; step < MOST_STEPS && free.length > 0; step++) {
      double before = log;
      double[] to = at.clone();
      double[] by = step(damping);
      for (int i = 0; i < free.length; i++) {
        to[free[i]] = Math.max(0, Math.min(1, at[free[i]] + by[i]));
      }
      if (move(to)) {
        damping *= LESS;
        slopes = slopes();
        if (log - before < LITTLE) {
          return;
        }
      } else {
        damping *= MORE;
      }
    }
  }

  /** How each reading's misfit changes with each free size. */
  private double[][] slopes() {
    double[][] result = new double[free.length][];
    for (int i = 0; i < free.length; i++) {
      double[] beside = at.clone();
      double by = beside[free[i]] > 0.5 ? -DIFFERENCE : DIFFERENCE;
      beside[free[i]] += by;
      double[] there = off(predicted(beside));
      for (int r = 0; r < there.length; r++) {
        there[r] = (there[r] - off[r]) / by;
      }
      result[i] = there;
    }
    return result;
  }

  /** The squares of the slopes, with something added on the diagonal. */
  private double[][] squares(double added) {
    int n = free.length;
    double[][] squares = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        squares[i][j] = dot(slopes[i], slopes[j]);
      }
    }
    for (int i = 0; i < n; i++) {
      squares[i][i] += added;
    }
    return squares;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int r = 0; r < one.length; r++) {
      sum += one[r] * other[r];
    }
    return sum;
  }

  private double[] step(double damping) {
    int n = free.length;
    double[][] a = squares(1e-6);
    double[] b = new double[n];
    for (int i = 0; i < n; i++) {
      b[i] = -dot(slopes[i], off);
      a[i][i] *= 1 + damping;
    }
    if (n == 1) {
      return new double[] {b[0] / a[0][0]};
    }
    double determinant = a[0][0] * a[1][1] - a[0][1] * a[1][0];
    return new double[] {
      (a[1][1] * b[0] - a[0][1] * b[1]) / determinant,
      (a[0][0] * b[1] - a[1][0] * b[0]) / determinant
    };
  }

  /**
   * The directions in which the sizes are known best and worst, each as long as its standard
   * deviation.
   */
  public double[][] axes() {
    double[][] a = squares(1 / (PRIOR_DEVIATION * PRIOR_DEVIATION));
    if (free.length == 0) {
      return new double[0][];
    }
    if (free.length == 1) {
      double[] axis = new double[2];
      axis[free[0]] = 1 / Math.sqrt(a[0][0]);
      return new double[][] {axis};
    }
    double mean = (a[0][0] + a[1][1]) / 2;
    double half = Math.hypot((a[0][0] - a[1][1]) / 2, a[0][1]);
    double angle = Math.atan2(2 * a[0][1], a[0][0] - a[1][1]) / 2;
    double strong = 1 / Math.sqrt(mean + half);
    double weak = 1 / Math.sqrt(Math.max(mean - half, 1e-12));
    return new double[][] {
      {strong * Math.cos(angle), strong * Math.sin(angle)},
      {-weak * Math.sin(angle), weak * Math.cos(angle)}
    };
  }

  /** Logarithm of the likelihood at other sizes, the misfits taken as straight. */
  public double logAlong(double[] by) {
    double sum = log;
    for (int r = 0; r < off.length; r++) {
      double there = off[r];
      for (int i = 0; i < free.length; i++) {
        there += slopes[i][r] * by[free[i]];
      }
      sum += StudentT.logDensity(there) - StudentT.logDensity(off[r]);
    }
    return sum;
  }
}
