package rillwright.cli.page.view;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.page.desk.Outcome;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.steady.PointState;

/** What runs over each fall against its target, and what the pumps draw: always in sight. */
final class FallsView {
  /** The bar shows this share of a target at its full width. */
  private static final double FULL = 1.5;

  private static final int BAR = 150;

  private FallsView() {}

  static void print(Outcome outcome, Html html) {
    html.open("section", "id", "falls", "aria-label", "Falls and watts", "aria-live", "off");
    outcome.trouble().ifPresent(why -> html.leaf("p", why, "class", "trouble"));
    Optional<Solved> solved = outcome.solved();
    if (solved.isPresent()) {
      ShownUnits units = Shown.of(solved.get());
      html.open("ul", "class", "falls");
      for (PointState state : waysOut(solved.get())) {
        fall(state, units, html);
      }
      power(solved.get(), units, html);
      html.close();
    }
    html.close();
  }

  private static List<PointState> waysOut(Solved solved) {
    return solved.state().points().stream()
        .filter(it -> it.point() instanceof Fall || it.point() instanceof Outlet)
        .toList();
  }

  private static void fall(PointState state, ShownUnits units, Html html) {
    Point point = state.point();
    double flow = state.outflowM3PerS();
    OptionalDouble target = point.targetM3PerS();
    boolean under = state.isUnderTarget();
    html.open("li", "data-point", point.name().value());
    html.leaf("span", point.name().value(), "class", "name");
    html.leaf("strong", flow == 0 ? "dry" : units.flow(flow), "class", "flow");
    if (target.isPresent() && target.getAsDouble() > 0) {
      double share = flow / target.getAsDouble();
      bar(share, under, html);
      html.leaf(
          "span",
          units.share(share) + " of " + units.writtenFlow(target.getAsDouble()),
          "class",
          under ? "share under" : "share");
    }
    if (point instanceof Fall fall && flow > 0) {
      html.leaf(
          "span",
          units.tools().ruler().with(fall.weir().headAt(flow))
              + " \u00b1"
              + units.share(fall.depthBand())
              + " over the crest",
          "class",
          "depth");
    }
    html.close();
  }

  /** How much of the target: a bar with a tick where the target lies. */
  private static void bar(double share, boolean under, Html html) {
    double wide = BAR * Math.min(share, FULL) / FULL;
    double tick = BAR / FULL;
    html.open(
        "svg",
        "class",
        under ? "bar under" : "bar",
        "viewBox",
        "0 0 150 10",
        "aria-hidden",
        "true");
    html.leaf("rect", "", "class", "all", "x", "0", "y", "2", "width", "150", "height", "6");
    html.leaf(
        "rect",
        "",
        "class",
        "got",
        "x",
        "0",
        "y",
        "2",
        "width",
        px(Math.max(0, wide)),
        "height",
        "6");
    html.leaf(
        "rect", "", "class", "target", "x", px(tick - 1), "y", "0", "width", "2", "height", "10");
    html.close();
  }

  private static String px(double px) {
    return String.format(Locale.ROOT, "%.1f", px);
  }

  private static void power(Solved solved, ShownUnits units, Html html) {
    RunningFigures takes = solved.takes();
    if (takes.pumps() == 0) {
      return;
    }
    html.open("li", "class", "watts").leaf("span", "pumps draw", "class", "name");
    html.leaf(
        "strong",
        takes.powerW().isPresent() ? units.power(takes.powerW().getAsDouble()) : "not known",
        "class",
        "flow");
    if (takes.energyKwhPerYear().isPresent()) {
      html.leaf(
          "span",
          "about " + units.amount(takes.energyKwhPerYear().getAsDouble()) + " kWh a year",
          "class",
          "share");
    }
    if (takes.costPerYear().isPresent() && takes.running().price().isPresent()) {
      html.leaf(
          "span",
          units.amount(takes.costPerYear().getAsDouble())
              + " "
              + takes.running().price().get().currency()
              + " a year",
          "class",
          "depth");
    }
    html.close();
  }
}
