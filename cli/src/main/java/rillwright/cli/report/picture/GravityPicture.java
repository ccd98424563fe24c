package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rillwright.cli.report.GravityAnswer;
import rillwright.cli.report.choice.SizeWords;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.chart.content.Panel;
import rillwright.curves.chart.content.PanelChart;
import rillwright.solver.network.PointName;
import rillwright.solver.pumping.Wishes;
import rillwright.solver.study.pipechoice.GravityPipe;
import rillwright.solver.study.pipechoice.PipeOption;

/** The picture of what each fall gets by the size of the pipe, where nothing is pumped. */
public final class GravityPicture {
  private static final double PERCENT = 100;
  private static final double HALF_DASH = 0.08;

  private GravityPicture() {}

  /** What is to be drawn. */
  public static PanelChart of(GravityAnswer answer) {
    List<GravityPipe> byBore =
        answer.choice().ranked().stream()
            .sorted(Comparator.comparingDouble(GravityPicture::boreM))
            .toList();
    String caption =
        "What each fall gets with each size of pipe in "
            + new SizeWords(byBore).lines()
            + "; nothing is pumped. Dots are the sizes tried.";
    return new PanelChart(answer.title(), caption, 1, List.of(panel(byBore, answer.units())));
  }

  private static Panel panel(List<GravityPipe> byBore, ShownUnits units) {
    SizeWords sizes = new SizeWords(byBore);
    List<Panel.Curve> curves = new ArrayList<>();
    List<Panel.Spot> spots = new ArrayList<>();
    Wishes wishes = Wishes.of(byBore.get(0).option().network());
    for (PointName fall : wishes.flowM3PerS().keySet()) {
      List<Panel.Spot> points =
          byBore.stream()
              .map(
                  pipe ->
                      new Panel.Spot(
                          units.depthUnit().fromSi(boreM(pipe)),
                          PERCENT * wishes.shareAt(fall, pipe.state())))
              .toList();
      spots.addAll(points);
      curves.add(new Panel.Curve(fall.value(), points.size() > 1 ? points : dash(points.get(0))));
    }
    boolean several = byBore.get(0).option().sizes().size() > 1;
    return new Panel(
        "Inside diameter"
            + (several ? " (mean of the lines)" : "")
            + ", "
            + units.depthUnit().symbol(),
        "Of the wish, %",
        curves,
        List.of(new Panel.Mark(PERCENT, "the wish")),
        byBore.stream()
            .map(
                pipe ->
                    new Panel.Mark(
                        units.depthUnit().fromSi(boreM(pipe)), sizes.cell(pipe.option())))
            .toList(),
        spots);
  }

  /** One size makes no curve: a short dash shows in the stroke of the fall whose dot it is. */
  private static List<Panel.Spot> dash(Panel.Spot spot) {
    double half = HALF_DASH * spot.across();
    return List.of(
        new Panel.Spot(spot.across() - half, spot.up()),
        new Panel.Spot(spot.across() + half, spot.up()));
  }

  private static double boreM(GravityPipe pipe) {
    return pipe.option().sizes().values().stream()
        .mapToDouble(PipeOption.Size::boreM)
        .average()
        .orElseThrow();
  }
}
