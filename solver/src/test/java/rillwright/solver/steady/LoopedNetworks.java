package rillwright.solver.steady;

import static rillwright.solver.steady.PublishedCase.CFS;
import static rillwright.solver.steady.PublishedCase.FT;
import static rillwright.solver.steady.PublishedCase.head;
import static rillwright.solver.steady.PublishedCase.loss;
import static rillwright.solver.steady.Sketch.pipe;
import static rillwright.solver.steady.Sketch.quadratic;

import rillwright.solver.network.Friction;
import rillwright.solver.network.Part;

/** Published networks with loops. */
final class LoopedNetworks {
  private LoopedNetworks() {}

  /**
   * CE 3620 Water Resources Engineering, Lecture 9: Pipe network systems (Hardy Cross), lecture
   * sheet of 6 February 2013; h = K Q|Q| in feet and ft³/s. The 10 ft between the reservoirs follow
   * from a correction that the sheet prints.
   */
  static PublishedCase threeLoopsWithTwoReservoirs() {
    Sketch sketch = hardyCross(0.38, 2.89, 2.53, 12.13, 2.17, 2.89, 0.94);
    return new PublishedCase("CE 3620, Lecture 9, three loops and two reservoirs", sketch)
        .printsFlow("1-2", CFS, 2.13, 0.005)
        .printsFlow("4-2", CFS, 0.32, 0.005)
        .printsFlow("1-4", CFS, 2.16, 0.005)
        .prints("loss 1-2", loss("1-2", FT), 13.10, 0.02)
        .prints("loss 4-2", loss("4-2", FT), 1.28, 0.02)
        .prints("loss 1-4", loss("1-4", FT), 11.81, 0.02)
        .computedFlow("A-1", CFS, 6.2899, 0.0001)
        .computedFlow("3-2", CFS, 1.5466, 0.0001)
        .computedFlow("3-4", CFS, 1.1635, 0.0001)
        .computedFlow("B-3", CFS, 3.7101, 0.0001)
        .computed("head 1", head("1", FT), -5.034, 0.001)
        .computed("head 2", head("2", FT), -18.130, 0.001)
        .computed("head 3", head("3", FT), -12.939, 0.001)
        .computed("head 4", head("4", FT), -16.851, 0.001);
  }

  private static Sketch hardyCross(double... k) {
    Part[] parts = new Part[k.length];
    for (int i = 0; i < k.length; i++) {
      parts[i] = quadratic(k[i] * FT / (CFS * CFS));
    }
    return hardyCross(parts);
  }

  private static Sketch hardyCross(Part... parts) {
    return new Sketch()
        .basin("A", 10 * FT)
        .basin("B", 0)
        .tee("1", 2 * CFS)
        .tee("2", 4 * CFS)
        .tee("3", 1 * CFS)
        .tee("4", 3 * CFS)
        .line("A-1", "A", "1", parts[0])
        .line("1-2", "1", "2", parts[1])
        .line("1-4", "1", "4", parts[2])
        .line("4-2", "4", "2", parts[3])
        .line("3-2", "3", "2", parts[4])
        .line("3-4", "3", "4", parts[5])
        .line("B-3", "B", "3", parts[6]);
  }

  /**
   * The same network by the sheet's lengths, bores and Darcy factors, which its K round. Computed
   * with g = 32.2 ft/s²; ours shifts flows by less than the tolerance.
   */
  static PublishedCase threeLoopsByLengthAndFactor() {
    Sketch sketch =
        hardyCross(
            inches(1000, 12, 0.015),
            inches(800, 8, 0.019),
            inches(700, 8, 0.019),
            inches(750, 6, 0.020),
            inches(600, 8, 0.019),
            inches(800, 8, 0.019),
            inches(900, 10, 0.017));
    return new PublishedCase("the same by lengths, bores and factors", sketch)
        .computedFlow("A-1", CFS, 6.3044, 0.001)
        .computedFlow("1-2", CFS, 2.1351, 0.001)
        .computedFlow("1-4", CFS, 2.1694, 0.001)
        .computedFlow("4-2", CFS, 0.3255, 0.001)
        .computedFlow("3-2", CFS, 1.5394, 0.001)
        .computedFlow("3-4", CFS, 1.1562, 0.001)
        .computedFlow("B-3", CFS, 3.6956, 0.001);
  }

  private static Part inches(double lengthFt, double diameterIn, double factor) {
    return pipe(lengthFt * FT, diameterIn * FT / 12, factor);
  }

  /**
   * Pipe Network Analysis, worked sheet of 17 December 2015: ten cast iron pipes of 0.26 mm, ν =
   * 1e-6 m²/s. The sheet prints the data and a first iteration, not the balanced flows.
   */
  static PublishedCase tenPipes() {
    Sketch sketch =
        new Sketch()
            .viscosity(1e-6)
            .basin("1", 0)
            .tee("2")
            .tee("3", 0.050)
            .tee("4", 0.100)
            .tee("5")
            .tee("6")
            .tee("7")
            .tee("8", 0.150)
            .line("1-2", "1", "2", castIron(300, 0.30))
            .line("1-6", "1", "6", castIron(250, 0.25))
            .line("2-3", "2", "3", castIron(350, 0.20))
            .line("2-4", "2", "4", castIron(125, 0.20))
            .line("4-5", "4", "5", castIron(350, 0.20))
            .line("3-5", "3", "5", castIron(125, 0.20))
            .line("6-7", "6", "7", castIron(300, 0.20))
            .line("7-4", "7", "4", castIron(125, 0.15))
            .line("7-8", "7", "8", castIron(350, 0.20))
            .line("5-8", "5", "8", castIron(125, 0.15));
    PublishedCase published =
        new PublishedCase("Pipe Network Analysis (2015), ten pipes, three loops", sketch);
    String[] lines = {"1-2", "1-6", "2-3", "2-4", "4-5", "3-5", "6-7", "7-4", "7-8", "5-8"};
    double[] flows = {
      0.20496, 0.09504, 0.07973, 0.12524, 0.03309, 0.02973, 0.09504, 0.00785, 0.08719, 0.06281
    };
    for (int i = 0; i < lines.length; i++) {
      published.computedFlow(lines[i], 1, flows[i], 0.005 * flows[i]);
    }
    double[] heads = {-8.296, -20.615, -19.064, -21.248, -3.903, -18.853, -33.556};
    for (int i = 0; i < heads.length; i++) {
      String point = String.valueOf(i + 2);
      published.computed("head " + point, head(point, 1), heads[i], 0.005 * -heads[i]);
    }
    return published;
  }

  static Part castIron(double lengthM, double diameterM) {
    return pipe(lengthM, diameterM, new Friction.Roughness(0.26e-3));
  }
}
