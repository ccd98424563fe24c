package rillwright.solver.steady;

/**
 * Head laws written once more from their formulas, with nothing of the project: to confirm the
 * balance independently. SI.
 */
final class PlainLaws {
  private static final double G = 9.80665;

  private PlainLaws() {}

  /** Friction of a pipe: laminar, Colebrook–White by repeated substitution, a cubic between. */
  static double pipe(
      double flow, double length, double diameter, double roughness, double viscosity) {
    double size = Math.abs(flow);
    double flowPerReynolds = viscosity * Math.PI * diameter / 4;
    double reynolds = size / flowPerReynolds;
    double loss;
    if (reynolds <= 2000) {
      loss = laminar(size, length, diameter, viscosity);
    } else if (reynolds >= 4000) {
      loss = turbulent(size, length, diameter, roughness, viscosity);
    } else {
      double low = 2000 * flowPerReynolds;
      double high = 4000 * flowPerReynolds;
      double lowLoss = laminar(low, length, diameter, viscosity);
      double step = 1e-3 * high;
      double near =
          turbulent(high + step, length, diameter, roughness, viscosity)
              - turbulent(high - step, length, diameter, roughness, viscosity);
      double far =
          turbulent(high + 2 * step, length, diameter, roughness, viscosity)
              - turbulent(high - 2 * step, length, diameter, roughness, viscosity);
      double slope = (8 * near - far) / (12 * step);
      loss =
          hermite(
              size,
              low,
              high,
              lowLoss,
              turbulent(high, length, diameter, roughness, viscosity),
              lowLoss / low,
              slope);
    }
    return flow < 0 ? -loss : loss;
  }

  private static double laminar(double flow, double length, double diameter, double viscosity) {
    // Hagen and Poiseuille: h = 128 ν L Q/(π g D⁴).
    return 128 * viscosity * length * flow / (Math.PI * G * Math.pow(diameter, 4));
  }

  private static double turbulent(
      double flow, double length, double diameter, double roughness, double viscosity) {
    double speed = 4 * flow / (Math.PI * diameter * diameter);
    double reynolds = speed * diameter / viscosity;
    double x = 7;
    for (int i = 0; i < 60; i++) {
      x = -2 * Math.log10(roughness / (3.7 * diameter) + 2.51 * x / reynolds);
    }
    return length / diameter * speed * speed / (2 * G * x * x);
  }

  /** K on the velocity head. */
  static double fitting(double flow, double k, double diameter) {
    double speed = 4 * flow / (Math.PI * diameter * diameter);
    return k * speed * Math.abs(speed) / (2 * G);
  }

  /** Head above its crest that a weir Q = C b h^1.5 needs; the mirror image below no flow. */
  static double weir(double flow, double coefficient, double width) {
    double head = Math.pow(Math.abs(flow) / (coefficient * width), 2.0 / 3);
    return flow < 0 ? -head : head;
  }

  /** Head of a pump, falling points from zero flow: Fritsch and Butland's slopes. */
  static double pump(double flow, double[] flows, double[] heads) {
    int n = flows.length;
    double[] slopes = new double[n];
    for (int i = 1; i < n - 1; i++) {
      double h1 = flows[i] - flows[i - 1];
      double h2 = flows[i + 1] - flows[i];
      double s1 = (heads[i] - heads[i - 1]) / h1;
      double s2 = (heads[i + 1] - heads[i]) / h2;
      slopes[i] = (3 * h1 + 3 * h2) / ((2 * h2 + h1) / s1 + (h2 + 2 * h1) / s2);
    }
    slopes[0] = end(flows, heads, 0, 1, 2);
    slopes[n - 1] = end(flows, heads, n - 1, n - 2, n - 3);
    double lastSecant = (heads[n - 1] - heads[n - 2]) / (flows[n - 1] - flows[n - 2]);
    slopes[n - 1] = Math.min(slopes[n - 1], lastSecant / 3);
    if (flow <= 0) {
      return heads[0] + slopes[0] * flow;
    }
    if (flow >= flows[n - 1]) {
      return heads[n - 1] + slopes[n - 1] * (flow - flows[n - 1]);
    }
    int i = 0;
    while (flow > flows[i + 1]) {
      i++;
    }
    return hermite(flow, flows[i], flows[i + 1], heads[i], heads[i + 1], slopes[i], slopes[i + 1]);
  }

  private static double end(double[] x, double[] y, int at, int next, int second) {
    double h1 = Math.abs(x[next] - x[at]);
    double h2 = Math.abs(x[second] - x[next]);
    double s1 = (y[next] - y[at]) / (x[next] - x[at]);
    double s2 = (y[second] - y[next]) / (x[second] - x[next]);
    return Math.min(0, ((2 * h1 + h2) * s1 - h1 * s2) / (h1 + h2));
  }

  /** The cubic through two points with given slopes, in powers of the distance from the first. */
  private static double hermite(
      double x, double x0, double x1, double y0, double y1, double d0, double d1) {
    double h = x1 - x0;
    double secant = (y1 - y0) / h;
    double s = x - x0;
    double c2 = (3 * secant - 2 * d0 - d1) / h;
    double c3 = (d0 + d1 - 2 * secant) / (h * h);
    return y0 + s * (d0 + s * (c2 + s * c3));
  }
}
