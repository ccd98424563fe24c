package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;

/**
 * Targets of falls that no crest of that width is given, and would be plausible in another unit: a
 * factor of 60 stands between a minute and an hour, 1,000 between a litre and a cubic metre, 3.6
 * between a litre a second and a cubic metre an hour.
 */
final class DoubtfulTargetDetector implements NetworkDetector {

  /** Thinnest and thickest water over a crest that anyone asks for, m; common practice. */
  private static final double THINNEST_M = 0.0015;

  private static final double THICKEST_M = 0.25;

  /** What a garden's fall usually has, m; common practice, no source. */
  private static final double USUALLY_THINNEST_M = 0.004;

  private static final double USUALLY_THICKEST_M = 0.12;

  @Override
  public List<Finding> findIn(Network network) {
    List<Finding> findings = new ArrayList<>();
    for (Fall fall : network.points(Fall.class)) {
      double target = fall.targetM3PerS().orElse(0);
      double head = fall.weir().headAt(target);
      if (target > 0 && (head < THINNEST_M || head > THICKEST_M)) {
        DoubleStream.of(60, 1000, 3.6)
            .filter(factor -> isUsual(fall, head > THICKEST_M ? target / factor : target * factor))
            .findFirst()
            .ifPresent(factor -> findings.add(doubtful(fall, target, head, factor)));
      }
    }
    return findings;
  }

  private static boolean isUsual(Fall fall, double flowM3PerS) {
    double head = fall.weir().headAt(flowM3PerS);
    return head > USUALLY_THINNEST_M && head < USUALLY_THICKEST_M;
  }

  private static Finding doubtful(Fall fall, double targetM3PerS, double headM, double factor) {
    String name = fall.name().value();
    return Finding.of(Severity.ADVICE, "doubtful-target", name, "The target of \"" + name + "\", ")
        .writtenFlow("target", targetM3PerS)
        .then(", is water ")
        .depth("crestHead", headM)
        .then(" deep over its crest; the usual depth needs a flow ")
        .figure(
            "factor", factor, Figure.Unit.ONE, words -> factor == 3.6 ? "3.6" : "" + (int) factor)
        .then(" times " + (headM > THICKEST_M ? "smaller" : "larger") + ": check its unit.");
  }
}
