package rillwright.solver.law;

import java.util.SplittableRandom;

/** Random parameters for laws to be tried. */
public final class Draw {
  private Draw() {}

  /** A number between two bounds, every order of magnitude as likely as another. */
  public static double between(SplittableRandom random, double least, double greatest) {
    return least * Math.pow(greatest / least, random.nextDouble());
  }

  /** The bore of a garden pipe or a larger one. */
  public static Bore bore(SplittableRandom random) {
    return new Bore(between(random, 0.008, 0.3));
  }

  /** The flow at which water runs through a bore at 1 m/s, m³/s. */
  public static double usualFlowM3PerS(Bore bore) {
    return bore.areaM2();
  }
}
