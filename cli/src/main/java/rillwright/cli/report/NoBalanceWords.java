package rillwright.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.PointName;
import rillwright.solver.network.topology.UnmetDraw;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.NoBalance.FloatingPoints;
import rillwright.solver.steady.NoBalance.UnmetDraws;

/** Why a network has no balance, and what to do. */
public final class NoBalanceWords {
  private final ShownUnits units;

  private NoBalanceWords(ShownUnits units) {
    this.units = units;
  }

  /** A few sentences. */
  public static String of(NoBalance.Reason reason, ShownUnits units) {
    if (reason instanceof FloatingPoints floating) {
      return floating(floating.points());
    }
    NoBalanceWords words = new NoBalanceWords(units);
    return ((UnmetDraws) reason)
        .draws().stream().map(words::unmet).collect(Collectors.joining(" "));
  }

  private static String floating(List<PointName> points) {
    boolean one = points.size() == 1;
    String names = points.stream().map(NoBalanceWords::quoted).collect(Collectors.joining(", "));
    return "no balance: no line joins "
        + names
        + " to open water, so the water there has no level to balance against; lead a line from "
        + (one ? "it" : "each of them")
        + " to a basin, a fall or an outlet, or take "
        + (one ? "it" : "them")
        + " out.";
  }

  private String unmet(UnmetDraw draw) {
    String at = quoted(draw.point());
    String most = flow(draw.metM3PerS());
    return draw.drawM3PerS() > 0
        ? "no balance: "
            + at
            + " draws "
            + units.writtenFlow(draw.drawM3PerS())
            + ", and the lines that lead there can bring only "
            + most
            + "; a shut valve, a check valve or a skimmer holds back the rest. Open the way, or"
            + " draw less."
        : "no balance: "
            + units.writtenFlow(-draw.drawM3PerS())
            + " is put in at "
            + at
            + ", and the lines that lead away can take only "
            + flow(-draw.metM3PerS())
            + "; a shut valve or a check valve holds back the rest. Open the way, or put in less.";
  }

  private static String quoted(PointName point) {
    return '"' + point.value() + '"';
  }

  private String flow(double flowM3PerS) {
    return units.flow(Math.abs(flowM3PerS));
  }
}
