package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.choice.GravityAnswer;
import rillwright.curves.chart.content.Panel;
import rillwright.curves.chart.content.PanelChart;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Targets;
import rillwright.solver.study.pipechoice.GravityPipe;

/** The picture of what each fall gets by the size of the pipe, where nothing is pumped. */
public final class GravityPicture {
  private static final double PERCENT = 100;
  private static final double HALF_DASH = 0.08;
  private static final double HALF_STEP = 0.3;

  /** More choices than these would be too narrow; the best are drawn. */
  private static final int MOST_PLACES = 8;

  private GravityPicture() {}

  /** What is to be drawn. */
  public static PanelChart of(GravityAnswer answer) {
    List<GravityPipe> ranked = answer.choice().ranked();
    SizeWords sizes = new SizeWords(ranked);
    boolean alike =
        ranked.stream()
            .allMatch(pipe -> pipe.option().sizes().values().stream().distinct().count() == 1);
    String caption =
        "What each fall gets with each size of pipe in "
            + sizes.lines()
            + ", the valves as they stand; nothing is pumped."
            + (alike ? " Dots are the sizes tried." : " The best first, from left to right.");
    ShownUnits units = Shown.of(answer);
    return new PanelChart(
        answer.title(),
        caption,
        1,
        List.of(alike ? byBore(ranked, sizes, units) : byRank(ranked, sizes)));
  }

  private static Panel byBore(List<GravityPipe> ranked, SizeWords sizes, ShownUnits units) {
    List<GravityPipe> byBore =
        ranked.stream().sorted(Comparator.comparingDouble(GravityPicture::boreM)).toList();
    Targets targets = Targets.of(byBore.get(0).option().network());
    List<Panel.Curve> curves = new ArrayList<>();
    List<Panel.Spot> spots = new ArrayList<>();
    for (PointName fall : targets.falls()) {
      List<Panel.Spot> points =
          byBore.stream()
              .map(
                  pipe ->
                      new Panel.Spot(
                          units.depthUnit().fromSi(boreM(pipe)), share(pipe, fall, targets)))
              .toList();
      spots.addAll(points);
      curves.add(
          points.size() > 1
              ? new Panel.Curve(fall.value(), points)
              : dash(fall, points.get(0), HALF_DASH * points.get(0).across()));
    }
    return panel(
        "Inside diameter, " + units.depthUnit().symbol(),
        curves,
        byBore.stream()
            .map(
                pipe ->
                    new Panel.Mark(
                        units.depthUnit().fromSi(boreM(pipe)), sizes.cell(pipe.option())))
            .toList(),
        spots);
  }

  /** Where the lines' sizes differ there is no one diameter to go by: a place for each choice. */
  private static Panel byRank(List<GravityPipe> ranked, SizeWords sizes) {
    List<GravityPipe> drawn = ranked.subList(0, Math.min(MOST_PLACES, ranked.size()));
    Targets targets = Targets.of(drawn.get(0).option().network());
    List<Panel.Curve> curves = new ArrayList<>();
    List<Panel.Mark> places = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      for (PointName fall : targets.falls()) {
        Panel.Spot spot = new Panel.Spot(i + 1.0, share(drawn.get(i), fall, targets));
        curves.add(dash(fall, spot, HALF_STEP));
      }
      places.add(new Panel.Mark(i + 1.0, sizes.cell(drawn.get(i).option())));
    }
    return panel("Choice, the best first", curves, places, List.of());
  }

  private static Panel panel(
      String across, List<Panel.Curve> curves, List<Panel.Mark> places, List<Panel.Spot> spots) {
    return new Panel(
        across,
        "Of the target, %",
        curves,
        List.of(new Panel.Mark(PERCENT, "the target")),
        places,
        spots);
  }

  private static double share(GravityPipe pipe, PointName fall, Targets targets) {
    return PERCENT * targets.shareAt(fall, pipe.state());
  }

  /** A single value shows as a short dash in the stroke of its fall. */
  private static Panel.Curve dash(PointName fall, Panel.Spot spot, double half) {
    return new Panel.Curve(
        fall.value(),
        List.of(
            new Panel.Spot(spot.across() - half, spot.up()),
            new Panel.Spot(spot.across() + half, spot.up())));
  }

  private static double boreM(GravityPipe pipe) {
    return pipe.option().sizes().values().iterator().next().boreM();
  }
}
