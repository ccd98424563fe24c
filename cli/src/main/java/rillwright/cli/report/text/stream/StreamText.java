package rillwright.cli.report.text.stream;

import java.util.List;
import java.util.Optional;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.RunningCost;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.curves.wording.PlainText;
import rillwright.solver.finding.Finding;
import rillwright.solver.stream.RunningWater;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.StreamState;
import rillwright.solver.stream.Transit;
import rillwright.solver.stream.WaterLoss;
import rillwright.solver.stream.time.TimeCourse;

/** Streams and levels for people. */
public final class StreamText {
  private static final List<String> PARTS =
      List.of(
          "in the reaches",
          "in their gravel",
          "above pools' crests",
          "above boxes' crests",
          "in filters",
          "in draining pipes");

  private final StreamAnswer answer;
  private final StreamBudget budget;
  private final ShownUnits units;
  private final PageBuilder page;
  private final Optional<TimeCourse> course;

  private StreamText(StreamAnswer answer, PageBuilder page) {
    this.answer = answer;
    this.budget = answer.budget();
    this.units = Shown.of(answer);
    this.page = page;
    this.course = answer.course();
  }

  /** The page. */
  public static Page of(StreamAnswer answer) {
    PageBuilder page = ChangedWords.page(answer.title(), answer.changes());
    new StreamText(answer, page).print();
    return page.build();
  }

  /** Reaches, water in transit and levels, on another page. */
  public static void water(StreamAnswer answer, PageBuilder page) {
    new StreamText(answer, page).water();
  }

  private void water() {
    List<StreamState> streams = budget.running().streams();
    for (int i = 0; i < streams.size(); i++) {
      new ReachesTable(streams.get(i), budget.toppedUp().streams().get(i), units).print(page);
    }
    transit();
    LevelsTable.print(budget, units, page);
    budget.running().plan().loss().ifPresent(this::evaporation);
  }

  private void print() {
    water();
    course.ifPresent(this::times);
    RunningCost.print(answer.takes(), units, page);
    if (!answer.takes().turnovers().isEmpty()) {
      page.paragraph("Volumes here are at the levels while it runs.");
    }
    page.heading("WARNINGS AND NOTES");
    for (Finding finding : budget.findings()) {
      page.marked("! ", finding.message(units));
    }
    if (budget.running().streams().isEmpty()) {
      page.marked(
          "- ",
          "The file describes no stream, so water in transit in one is not counted; write for"
              + " example \"streams: {main: {from: upper fall, to: pond, reaches: [{step: {height:"
              + " 1 ft, width: 2 ft}}]}}\".");
    } else if (budget.findings().isEmpty()) {
      page.paragraph("No warnings from these checks.");
    }
    page.marked(
        "- ",
        "Any open water can drown a small child. Water held uphill needs an overflow that goes"
            + " somewhere safe. Top up through an air gap, never with a hose under water. Local"
            + " codes decide.");
  }

  private void evaporation(WaterLoss loss) {
    page.paragraph(
        "Evaporation takes "
            + units.fineDepth(loss.evaporationMPerDay())
            + " a day off all open water, the stream's too"
            + (loss.byWeather()
                ? ", by the weather that the file gives and the temperature of its water"
                : "")
            + (loss.splash() > 0 ? "; splash takes " + units.share(loss.splash()) + " more" : "")
            + ".");
  }

  private void times(TimeCourse followed) {
    new TimesTable(followed, units, comeToRest()).print(page);
    if (followed.givenUp().isPresent()) {
      givenUp(followed.givenUp().get());
      return;
    }
    String first =
        followed.firstReturnS().isPresent()
            ? "The first water returns within "
                + units.duration(Math.max(60, followed.firstReturnS().getAsDouble()))
                + " of the start, all"
            : "All";
    String steady =
        first
            + " levels are steady after "
            + units.duration(followed.stopsAtS())
            + ", and at rest ";
    String moving =
        "Not all levels become steady; the pump stops after "
            + units.duration(followed.stopsAtS())
            + ", and they are at rest ";
    page.paragraph(
        (comeToRest() ? steady : moving)
            + units.duration(followed.last().timeS() - followed.stopsAtS())
            + " after the stop (changing by less than "
            + units.tools().still()
            + " an hour)."
            + (followed.ranOverM3() > 0
                ? " Meanwhile " + units.volume(followed.ranOverM3()) + " overflowed."
                : ""));
  }

  private boolean comeToRest() {
    return budget.basins().stream().allMatch(basin -> basin.runningLevelM().isPresent());
  }

  private void givenUp(TimeCourse.GivenUp at) {
    page.paragraph(
        "Followed for "
            + units.duration(at.timeS())
            + " and no further: the level of "
            + PlainText.quoted(at.water().value())
            + " changes too fast. See the areas of its chambers, boxes, pools and basins, and the"
            + " length of its streams.");
  }

  private void transit() {
    RunningWater running = budget.running();
    Transit transit = running.transit();
    if (transit.totalM3() == 0) {
      page.space();
      page.paragraph("No water is in transit: the file has no stream or box, or nothing runs.");
      return;
    }
    double least = 0;
    double most = 0;
    for (StreamState stream : running.streams()) {
      least += stream.items().stream().mapToDouble(item -> item.leastVolumeM3()).sum();
      most += stream.items().stream().mapToDouble(item -> item.mostVolumeM3()).sum();
    }
    double known = transit.gravelM3() + transit.boxesM3() + transit.filtersM3() + transit.pipesM3();
    TableBuilder table = new TableBuilder("WATER IN TRANSIT").column("", Side.RIGHT);
    List<Double> parts =
        List.of(
            transit.streamsM3(),
            transit.gravelM3(),
            transit.poolsM3(),
            transit.boxesM3(),
            transit.filtersM3(),
            transit.pipesM3());
    List<String> volumes = units.volumes(parts);
    for (int i = 0; i < parts.size(); i++) {
      if (!volumes.get(i).startsWith("0 ")) {
        table.row(PARTS.get(i), volumes.get(i));
      }
    }
    table.row("all", units.volume(transit.totalM3()));
    page.table(table);
    if (most > least) {
      page.paragraph(
          "It may be "
              + units.volume(least + known)
              + " to "
              + units.volume(most + known)
              + ": the roughness of a bed is an estimate (common practice, no source).");
    }
  }
}
