package rillwright.cli.report.text.duty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rillwright.cli.report.choice.NotNeeded;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.SiteCautions;
import rillwright.cli.report.text.TurnoverWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.cli.study.duty.DutyRunning;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.pumping.LeastShutOff;
import rillwright.solver.pumping.Targets;
import rillwright.solver.study.duty.Duty;

/** The duty of a pump for people. */
public final class DutyText {
  private static final String NONE = "out of reach";

  /** Share at which a net or a filter is dirty; common practice, no source. */
  private static final double CLOGGED = 0.4;

  private final DutyAnswer answer;
  private final Duty duty;
  private final ShownUnits units;
  private final Targets targets;
  private final PageBuilder page;

  private DutyText(DutyAnswer answer, PageBuilder page) {
    this.answer = answer;
    this.duty = answer.duty();
    this.units = Shown.of(answer);
    this.targets = Targets.of(answer.network());
    this.page = page;
  }

  /** The page. */
  public static Page of(DutyAnswer answer) {
    PageBuilder page = ChangedWords.page(answer.title(), answer.changes());
    new DutyText(answer, page).print();
    return page.build();
  }

  /** The duty and what the falls get, on another page. */
  public static void duty(DutyAnswer answer, PageBuilder page) {
    DutyText text = new DutyText(answer, page);
    page.table(text.dutyTable());
    page.table(text.fallsTable());
  }

  private void print() {
    duty(answer, page);
    page.heading("WARNINGS AND NOTES");
    if (duty.throttled().isEmpty() || duty.asTheyStand().isEmpty()) {
      outOfReach();
    }
    if (duty.throttled().isPresent() && duty.asTheyStand().isPresent()) {
      if (targets.isNextToNothing(duty.throttled().get().flowM3PerS())) {
        page.marked("! ", NotNeeded.sentence(answer.network(), answer.place()));
        return;
      }
      duty.leastShutOff().ifPresent(this::start);
      boolean startsByItself = duty.leastShutOff().isEmpty();
      if (startsByItself && duty.throttled().get().headM() <= 0) {
        page.marked(
            "! ",
            (isOneFall() ? "N" : "With the others throttled, n")
                + "o pump is needed in "
                + PlainText.quoted(answer.place().line().value())
                + ": the difference in level alone drives the water.");
      }
      if (startsByItself && duty.asTheyStand().get().headM() <= 0) {
        return;
      }
      governing();
      DutyRunning takes = DutyRunning.of(answer).orElseThrow();
      power(takes);
      turnover(takes);
      choice();
    }
  }

  private TableBuilder dutyTable() {
    TableBuilder table =
        new TableBuilder("DUTY OF THE PUMP IN \"" + answer.place().line().value() + "\"")
            .column("flow", Side.RIGHT)
            .column("at a head of", Side.RIGHT);
    table.row(
        "valves as they stand",
        duty.asTheyStand().map(d -> units.flow(d.flowM3PerS())).orElse(NONE),
        duty.asTheyStand().map(d -> head(d.headM())).orElse("-"));
    if (isOneFall()) {
      return table;
    }
    table.row(
        "others throttled",
        duty.throttled().map(d -> units.flow(d.flowM3PerS())).orElse(NONE),
        duty.throttled().map(d -> head(d.headM())).orElse("-"));
    return table;
  }

  private String head(double headM) {
    return headM > 0 ? units.head(headM) : "none";
  }

  /** Whether there is only one target: then there are no others to throttle. */
  private boolean isOneFall() {
    return answer.network().points().stream()
            .filter(point -> point.targetM3PerS().isPresent())
            .count()
        == 1;
  }

  private TableBuilder fallsTable() {
    TableBuilder table =
        new TableBuilder("FALLS")
            .column("target", Side.RIGHT)
            .column("valves as they stand", Side.RIGHT);
    if (!isOneFall()) {
      table.column("others throttled", Side.RIGHT);
    }
    Map<PointName, Double> falls =
        duty.asTheyStand().map(Duty.AsTheyStand::fallsM3PerS).orElse(Map.of());
    for (Point point : answer.network().points()) {
      if (point.targetM3PerS().isPresent()) {
        double target = point.targetM3PerS().getAsDouble();
        Double gets = falls.get(point.name());
        List<String> cells = new ArrayList<>();
        cells.add(units.writtenFlow(target));
        cells.add(falls.containsKey(point.name()) ? units.flow(gets) : "-");
        if (!isOneFall()) {
          cells.add(duty.throttled().isPresent() ? units.writtenFlow(target) : "-");
        }
        table.row(point.name().value(), cells.toArray(String[]::new));
      }
    }
    return table;
  }

  private void outOfReach() {
    page.marked(
        "! ",
        duty.greatestFlowM3PerS()
            .map(
                greatest ->
                    "The targets are out of reach of any pump here: no more than "
                        + units.flow(greatest)
                        + ". Look at "
                        + (answer.network().placed(Skimmer.class).isEmpty()
                            ? ""
                            : "what the skimmer passes at this level of the pond, at ")
                        + "the intake's level, and at shut valves.")
            .orElse(
                "The targets are out of reach of any pump here: no water reaches one of the falls,"
                    + " however much is pumped. Check for shut valves and clogged filters in its"
                    + " line."));
  }

  private void governing() {
    String fall = duty.governing().orElseThrow().value();
    page.paragraph(
        isOneFall()
            ? "Keep the valves on the way to \""
                + fall
                + "\" wide open; larger pipe needs less head."
            : "\""
                + fall
                + "\" governs: it needs the most head. Keep the valves in its line wide open;"
                + " larger pipe helps there first.");
  }

  private void start(LeastShutOff least) {
    page.marked(
        "! ",
        "To start, its shut-off head must be more than "
            + units.head(least.headM())
            + ": its water must pass the high point of "
            + PlainText.quoted(least.line().value())
            + " before any flow starts.");
  }

  private void turnover(DutyRunning takes) {
    takes
        .turnover()
        .ifPresent(
            turnover -> page.paragraph("At that flow " + TurnoverWords.clause(turnover, units)));
  }

  private void power(DutyRunning takes) {
    if (takes.waterPowerW() <= 0) {
      return;
    }
    double good = takes.goodWireToWater();
    double poor = takes.poorWireToWater();
    page.paragraph(
        (isOneFall() ? "Hydraulic power is " : "With the others throttled, hydraulic power is ")
            + units.power(takes.waterPowerW())
            + ". Pond pumps of this size have "
            + units.share(poor)
            + " to "
            + units.share(good)
            + " wire-to-water efficiency (common practice"
            + takes.bestWireToWater().stream()
                .mapToObj(units::share)
                .map(best -> "; the best up to " + best)
                .collect(Collectors.joining())
            + "): expect "
            + units.powers(takes.powerW(good), takes.powerW(poor))
            + " electrical input, "
            + units.amount(takes.energyKwhPerYear(good))
            + " to "
            + units.amount(takes.energyKwhPerYear(poor))
            + " kWh a year"
            + takes
                .running()
                .price()
                .map(
                    price ->
                        ", "
                            + units.amount(takes.costPerYear(good).getAsDouble())
                            + " to "
                            + units.amount(takes.costPerYear(poor).getAsDouble())
                            + " "
                            + price.currency())
                .orElse("")
            + ".");
  }

  /** What of this file clogs: a skimmer, else a filter. */
  private void clogging() {
    answer
        .asksMoreClogged(CLOGGED)
        .ifPresent(
            placed -> {
              String kind = placed.part().kind();
              String before = "Nets clog and pipes foul: before deciding, ";
              page.paragraph(
                  before
                      + "run the file with a dirty "
                      + kind
                      + ", --set \""
                      + Addresses.ofPart(placed, "clogged", units.share(CLOGGED))
                      + "\".",
                  before
                      + "look at it with a "
                      + kind
                      + " clogged by "
                      + units.share(CLOGGED)
                      + ".");
            });
  }

  private void choice() {
    page.paragraph(
        "Look for a pump whose curve passes through "
            + (isOneFall() ? "this point" : "one of these points")
            + " or a little above it, in the middle of its range (40 to 85 % of its greatest flow;"
            + " where its sheet gives the power, 70 to 120 % of the flow of its best efficiency;"
            + " common practice). The greatest flow printed on a pump's box is at no head.");
    clogging();
    SiteCautions.printFilling(answer.job(), page);
    SiteCautions.print(answer.network(), page);
  }
}
