package rillwright.solver.stream.time;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.law.weir.Weir;

/**
 * Where stores run over: ponds at their overflow, chambers at their top. What is lost so is
 * gathered in a store of its own. An overflow's edge is not in the file: 0.3 m of a broad level
 * crest is taken (common practice, no source); it decides how fast water runs over, not how much.
 */
final class Brims {
  private static final double WIDTH_M = 0.3;

  /** That of a broad crest as in the catalogue of lips, m^½/s. */
  private static final double COEFFICIENT = 1.55;

  private static final Weir EDGE = new PowerWeir(COEFFICIENT, WIDTH_M, BrinkRule.FREE_OVERFALL);

  private final List<Brim> brims = new ArrayList<>();
  private final int gathered;

  private record Brim(int store, double levelM) {}

  /**
   * No brims yet.
   *
   * @param gathered the store of what runs over
   */
  Brims(int gathered) {
    this.gathered = gathered;
  }

  void add(int store, double levelM) {
    brims.add(new Brim(store, levelM));
  }

  /** The store of what overflowed. */
  int gathered() {
    return gathered;
  }

  /** Adds to what each store gains, m³/s. */
  void move(double[] levels, double[] net) {
    for (Brim brim : brims) {
      double flow = EDGE.flowAt(Math.max(0, levels[brim.store()] - brim.levelM()));
      net[brim.store()] -= flow;
      net[gathered] += flow;
    }
  }
}
