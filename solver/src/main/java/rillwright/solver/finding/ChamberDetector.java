package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Skimmer;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;

/** Chambers that the pump draws down to its intake, or whose skimmer lies dry. */
final class ChamberDetector implements Detector {

  /** A chamber that has fallen to the pump's intake. */
  record StarvedChamber(String at, double inflowM3PerS, double missingHeadM, boolean skimmer)
      implements Finding {
    @Override
    public String code() {
      return "starved-chamber";
    }

    @Override
    public String message(Wording wording) {
      String feeder = skimmer ? "The skimmer passes" : "What feeds it passes";
      return "The pump draws \""
          + at
          + "\" down to its intake and gulps air. "
          + feeder
          + " no more than "
          + wording.flow(inflowM3PerS)
          + " at that level. "
          + (skimmer
              ? "Clean the mouth and the net, raise the pond, widen or lower the sill, or take a smaller pump."
              : "Clean its way, take a larger pipe there, or a smaller pump.")
          + " Switch off and unplug before reaching in.";
    }
  }

  /** A skimmer whose sill stands out of the water. */
  record DrySkimmer(String at, String basin, double sillAboveLevelM) implements Finding {
    @Override
    public String code() {
      return "dry-skimmer";
    }

    @Override
    public String message(Wording wording) {
      return "\""
          + basin
          + "\" stands "
          + wording.depth(sillAboveLevelM)
          + " below the sill of the skimmer in \""
          + at
          + "\": nothing comes in. Top it up or set the skimmer lower.";
    }
  }

  /** A skimmer whose mouth is under water altogether. */
  record DrownedSkimmer(String at, String basin, double aboveMouthM) implements Finding {
    @Override
    public String code() {
      return "drowned-skimmer";
    }

    @Override
    public String message(Wording wording) {
      return "\""
          + basin
          + "\" stands "
          + wording.depth(aboveMouthM)
          + " above the top of the mouth of the skimmer in \""
          + at
          + "\": it no longer draws from the surface. Common practice is a level 1 in (25 mm) below the top.";
    }
  }

  @Override
  public List<Finding> findIn(SteadyState state) {
    List<Finding> findings = new ArrayList<>();
    for (PointState point : state.points()) {
      if (point.isStarved()) {
        String name = point.point().name().value();
        double inflow = 0;
        boolean skimmer = false;
        for (LineState line : state.lines()) {
          double into = flowInto(point, line);
          inflow += Math.max(0, into);
          skimmer |= into > 0 && line.line().parts().stream().anyMatch(Skimmer.class::isInstance);
        }
        findings.add(new StarvedChamber(name, inflow, point.missingHeadM().getAsDouble(), skimmer));
      }
    }
    for (Line line : state.network().lines()) {
      line.parts().forEach(part -> checkSkimmer(state.network(), line, part, findings));
    }
    return findings;
  }

  private static double flowInto(PointState point, LineState line) {
    if (line.line().to().equals(point.point().name())) {
      return line.flowM3PerS();
    }
    return line.line().from().equals(point.point().name()) ? -line.flowM3PerS() : 0;
  }

  private static void checkSkimmer(Network network, Line line, Part part, List<Finding> findings) {
    if (!(part instanceof Skimmer skimmer)) {
      return;
    }
    double level = network.settingOf(line).levelBeforeM().orElseThrow();
    if (level <= skimmer.sillM()) {
      findings.add(
          new DrySkimmer(line.name().value(), line.from().value(), skimmer.sillM() - level));
    }
    double top = skimmer.mouthTopM().orElse(Double.POSITIVE_INFINITY);
    if (level > top) {
      findings.add(new DrownedSkimmer(line.name().value(), line.from().value(), level - top));
    }
  }

  /** Whether a point is a chamber that runs over. */
  static boolean runsOver(PointState state) {
    return state.point() instanceof Chamber chamber
        && state.headM().isPresent()
        && state.headM().getAsDouble() > chamber.topM().orElse(Double.POSITIVE_INFINITY);
  }
}
