package rillwright.cli.report.text.jobsheet;

import java.util.List;
import java.util.function.Function;
import rillwright.cli.file.job.Photo;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Paper;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.picture.section.GardenPicture;
import rillwright.cli.report.picture.section.SectionPicture;
import rillwright.cli.report.text.Cautions;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.SheetAnswer.AsSet;
import rillwright.cli.study.solve.Solved;
import rillwright.curves.chart.content.SectionChart;
import rillwright.curves.sheet.fact.Price;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Outlet;
import rillwright.solver.steady.PointState;

/** What the customer gets: what there will be to see, what it costs to run, how to care for it. */
final class CustomerSheet {
  private final ShownUnits units;
  private final PageBuilder page;

  private CustomerSheet(SheetAnswer answer) {
    this.units = Shown.of(answer);
    this.page = SheetHead.begin(answer);
  }

  static Page of(SheetAnswer answer, Function<Photo, String> base64) {
    CustomerSheet sheet = new CustomerSheet(answer);
    Remarks remarks = new Remarks(answer, base64, sheet.page);
    answer.asSet().ifPresent(sheet::looks);
    if (answer.asSet().isEmpty()) {
      sheet.page.space();
      sheet.page.paragraph("The pump is still to be chosen; what the falls get follows from it.");
    }
    SectionChart garden =
        GardenPicture.of(answer.section(), SheetHead.from(answer.papers().details()));
    SectionPicture.leaves(garden).forEach(leaf -> sheet.page.show(new Head.Picture(leaf)));
    remarks.photographsAt(List.of(Fall.class, Outlet.class, Basin.class));
    answer.asSet().ifPresent(sheet::runningCost);
    YearOfCare.print(answer, sheet.page);
    sheet.page.heading("SAFETY");
    Cautions.ofWater(answer.checked().project())
        .forEach(caution -> sheet.page.marked("- ", caution));
    if (Cautions.isPumped(answer.network())) {
      sheet.page.marked(
          "- ",
          "Switch the pump off and unplug it before hands go into the water. Its wiring is for a"
              + " qualified electrician, licensed where the law requires it.");
    }
    return sheet.page.build().as(Paper.SHEET, "For the customer");
  }

  private void looks(AsSet set) {
    Solved solved = set.solved();
    TableBuilder table =
        new TableBuilder("WHAT YOU WILL SEE")
            .column("width", Side.RIGHT)
            .column("water", Side.RIGHT)
            .column("thick at the brink", Side.RIGHT)
            .column("", Side.LEFT);
    for (PointState state : solved.state().points()) {
      double flow = state.outflowM3PerS();
      if (state.point() instanceof Fall fall) {
        table.row(
            fall.name().value(),
            fall.widthM().isPresent() ? units.width(fall.widthM().getAsDouble()) : "",
            flow > 0 ? spoken(flow) : "none",
            thickness(fall, flow),
            Look.of(fall, flow).words());
      } else if (state.point() instanceof Outlet && flow > 0) {
        table.row(state.point().name().value(), "", spoken(flow), "", "");
      }
    }
    page.tableOfAny(table);
    if (!table.isEmpty()) {
      page.paragraph(
          "Stone, wind and the level of the crest make each fall different: the thickness is a"
              + " range, and how it looks is common practice."
              + (set.settings().isPresent()
                  ? " Computed with the valves set as the crew's sheet says."
                  : ""));
    }
  }

  /** A flow as people say it. */
  private String spoken(double flowM3PerS) {
    return units.flow(flowM3PerS).replace("gph", "gallons an hour").replace("m3/h", "m3 an hour");
  }

  private String thickness(Fall fall, double flow) {
    double brink = flow > 0 ? fall.weir().brinkDepthAt(flow).orElse(0) : 0;
    return brink > 0
        ? units.depths(brink * (1 - fall.depthBand()), brink * (1 + fall.depthBand()))
        : "";
  }

  private void runningCost(AsSet set) {
    RunningFigures takes = set.solved().takes();
    if (takes.pumps() == 0) {
      return;
    }
    page.heading("RUNNING COST");
    if (takes.powerW().isEmpty()) {
      page.paragraph("The power of a pump is not known yet; a watt meter tells it.");
      return;
    }
    String cost =
        takes
            .running()
            .price()
            .map(
                price ->
                    ", "
                        + units.amount(takes.costPerYear().orElse(0))
                        + " "
                        + price.currency()
                        + at(price))
            .orElse("");
    page.paragraph(
        "It draws "
            + units.power(takes.powerW().getAsDouble())
            + ". "
            + units.number(takes.running().hoursADay())
            + " hours a day on "
            + units.number(takes.running().daysAYear())
            + " days a year that is about "
            + units.amount(takes.energyKwhPerYear().orElse(0))
            + " kWh a year"
            + cost
            + ".");
  }

  private String at(Price price) {
    return " at " + units.number(price.amount()) + " " + price.currency() + " a kWh";
  }
}
