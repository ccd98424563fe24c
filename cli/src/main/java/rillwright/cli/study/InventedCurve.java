package rillwright.cli.study;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.network.Pump;

/** Pumps in lines that stand for one that is not chosen yet: their curve is nobody's. */
public final class InventedCurve {
  private InventedCurve() {}

  /** One a line in which such a pump stands; gone once a data sheet has its place. */
  public static List<Finding> findIn(Project project) {
    return project.network().placed(Pump.class).stream()
        .filter(it -> project.sheets().get(it.part().model()).facts().isInvented())
        .map(
            it ->
                Finding.of(Severity.ADVICE, "invented-curve", it.line().name().value(), "")
                    .then(
                        "The curve of \"" + it.part().model() + "\" is invented, and with it what")
                    .then(" flows, the watts and the cost; put a data sheet in its place before a")
                    .then(" pump is bought."))
        .toList();
  }
}
