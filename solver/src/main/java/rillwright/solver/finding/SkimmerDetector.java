package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Skimmer;

/** Skimmers whose mouth lies dry, or under water altogether. */
final class SkimmerDetector implements NetworkDetector {
  /** Of the water below the top of the mouth, m: 1 in; common practice, no source. */
  private static final double USUAL_BELOW_MOUTH_TOP_M = 0.0254;

  @Override
  public List<Finding> findIn(Network network) {
    List<Finding> findings = new ArrayList<>();
    for (Placed<Skimmer> placed : network.placed(Skimmer.class)) {
      String line = placed.line().name().value();
      String basin = placed.line().from().value();
      Skimmer skimmer = placed.part();
      double level = network.settingOf(placed.line()).levelBeforeM().orElseThrow();
      if (level <= skimmer.sillM()) {
        findings.add(dry(line, basin, skimmer.sillM() - level));
      }
      double top = skimmer.mouthTopM().orElse(Double.POSITIVE_INFINITY);
      if (level > top) {
        findings.add(drowned(line, basin, level - top));
      }
    }
    return findings;
  }

  /** A skimmer whose sill stands out of the water. */
  private static Finding dry(String at, String basin, double sillAboveLevelM) {
    return Finding.of(Severity.PROBLEM, "dry-skimmer", at, "\"" + basin + "\" stands ")
        .depth("belowSill", sillAboveLevelM)
        .then(
            " below the sill of the skimmer in \""
                + at
                + "\": nothing comes in. Top it up or set the skimmer lower.");
  }

  /** A skimmer whose mouth is under water altogether. */
  private static Finding drowned(String at, String basin, double aboveMouthM) {
    return Finding.of(Severity.ADVICE, "drowned-skimmer", at, "\"" + basin + "\" stands ")
        .depth("aboveMouthTop", aboveMouthM)
        .then(
            " above the top of the mouth of the skimmer in \""
                + at
                + "\": it no longer draws from the surface. Common practice is a level ")
        .depth("usualBelowMouthTop", USUAL_BELOW_MOUTH_TOP_M)
        .then(" below the top.");
  }
}
