package rillwright.cli.report.text.stream;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import rillwright.cli.report.conditions.SharedFinding;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.page.Tone;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.conditions.ChangesText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.curves.wording.Listing;
import rillwright.curves.wording.PlainText;
import rillwright.solver.finding.Finding;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.Holding;
import rillwright.solver.stream.LevelBudget;
import rillwright.solver.stream.StreamBudget;
import rillwright.solver.stream.StreamState;

/** Streams and levels in several conditions, for people. */
public final class StreamConditionsText {
  private static final String NONE = "-";

  private static final Set<String> SHOWN_ELSEWHERE =
      Set.of(
          "drops-do-not-add-up",
          "starves-at-start",
          "starves-without-topping-up",
          "skimmer-at-its-limit",
          "stream-dry",
          "runs-over-at-stop");

  private final Cases<StreamAnswer> answer;
  private final ShownUnits units;
  private final PageBuilder page;

  private StreamConditionsText(Cases<StreamAnswer> answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.page = ChangedWords.page(answer.title(), answer.changes());
  }

  /** The page. */
  public static Page of(Cases<StreamAnswer> answer) {
    return new StreamConditionsText(answer).print();
  }

  private Page print() {
    Set<PointName> basins = new LinkedHashSet<>();
    for (Case<StreamAnswer> one : answer.cases()) {
      one.answer()
          .ifPresent(shown -> shown.budget().basins().forEach(it -> basins.add(it.basin().name())));
    }
    basins.forEach(basin -> page.table(levels(basin)));
    page.table(ChangesText.table(answer.conditions()));
    page.heading("WARNINGS AND NOTES");
    basins.forEach(this::leastRoom);
    ChangesText.noBalance(answer, page);
    for (SharedFinding<StreamAnswer> found :
        SharedFinding.listOf(answer, StreamConditionsText::ofTheCondition)) {
      if (!found.holdsAsWritten()) {
        page.marked("! ", found.sentence(found.made().get(0), units));
      }
    }
    page.paragraph("Run \"rillwright stream\" for the warnings of the file as written.");
    if (answer.offered()) {
      ChangesText.offer(page);
    }
    return page.build();
  }

  /**
   * What the condition brings about: not the geometry, which is shown as written, nor the verdict.
   */
  private static List<Finding> ofTheCondition(StreamAnswer shown) {
    return shown.budget().findings().stream()
        .filter(finding -> !SHOWN_ELSEWHERE.contains(finding.code()))
        .toList();
  }

  private TableBuilder levels(PointName basin) {
    TableBuilder table =
        new TableBuilder("LEVELS OF \"" + basin.value() + "\"")
            .column("flow", Side.RIGHT)
            .column("in transit", Side.RIGHT)
            .column("running", Side.RIGHT)
            .column("starves at", Side.RIGHT)
            .column("starves in", Side.RIGHT)
            .column("after a stop", Side.RIGHT)
            .column("result", Side.LEFT);
    for (Case<StreamAnswer> one : answer.cases()) {
      table.row(one.condition(), cells(one, basin));
    }
    return table;
  }

  private List<Cell> cells(Case<StreamAnswer> one, PointName basin) {
    List<Cell> cells = new ArrayList<>();
    Optional<LevelBudget> level = one.answer().flatMap(shown -> find(shown.budget(), basin));
    if (level.isEmpty()) {
      for (int i = 0; i < 6; i++) {
        cells.add(Cell.of(NONE));
      }
      cells.add(Cell.of("no balance"));
      return cells;
    }
    StreamBudget shown = one.answer().orElseThrow().budget();
    double runs = shown.running().streams().stream().mapToDouble(StreamState::flowM3PerS).sum();
    cells.add(Cell.of(runs > 0 ? units.flow(runs) : "nothing"));
    cells.add(Cell.of(units.volume(shown.running().transitFrom(basin).totalM3())));
    cells.add(Cell.of(shown(level.get().runningLevelM(), units::level)));
    cells.add(Cell.of(shown(level.get().starveLevelM(), units::level)));
    cells.add(Cell.of(shown(level.get().daysToStarve(), this::days)));
    cells.add(Cell.of(shown(level.get().stoppedLevelM(), units::level)));
    cells.add(verdict(Holding.of(shown.running(), level.get())));
    return cells;
  }

  private static Optional<LevelBudget> find(StreamBudget shown, PointName basin) {
    return shown.basins().stream().filter(it -> it.basin().name().equals(basin)).findFirst();
  }

  private static String shown(OptionalDouble number, DoubleFunction<String> words) {
    return number.isPresent() && Double.isFinite(number.getAsDouble())
        ? words.apply(number.getAsDouble())
        : NONE;
  }

  private String days(double days) {
    return days > 0 ? units.days(days) : "as it fills";
  }

  private static Cell verdict(Holding holding) {
    return new Cell(words(holding), holding == Holding.HOLDS ? Tone.GOOD : Tone.WARNING);
  }

  private static String words(Holding holding) {
    return switch (holding) {
      case NO_WATER -> "no water";
      case RUNS_DRY -> "runs dry";
      case NOT_IN_BALANCE -> "not steady";
      case AT_ITS_LIMIT -> "at limit";
      case NEEDS_TOPPING_UP -> "needs water";
      case RUNS_OVER_AT_STOP -> "runs over";
      case HOLDS -> "holds";
    };
  }

  /** In which conditions it does not hold its pump, else in which it has least room. */
  private void leastRoom(PointName basin) {
    Map<String, List<String>> without = new LinkedHashMap<>();
    Optional<String> least = Optional.empty();
    double room = Double.POSITIVE_INFINITY;
    for (Case<StreamAnswer> one : answer.cases()) {
      Optional<LevelBudget> level = one.answer().flatMap(shown -> find(shown.budget(), basin));
      if (level.isEmpty() || level.get().starveLevelM().isEmpty()) {
        continue;
      }
      Holding holding = Holding.of(one.answer().orElseThrow().budget().running(), level.get());
      double here =
          level.get().runningLevelM().orElse(Double.POSITIVE_INFINITY)
              - level.get().starveLevelM().getAsDouble();
      if (holding.compareTo(Holding.NEEDS_TOPPING_UP) < 0) {
        without
            .computeIfAbsent(words(holding), any -> new ArrayList<>())
            .add(PlainText.quoted(one.condition()));
      } else if (here < room) {
        room = here;
        least = Optional.of(one.condition());
      }
    }
    String name = PlainText.quoted(basin.value());
    if (!without.isEmpty()) {
      page.marked(
          "! ",
          name
              + " does not keep its pump supplied: "
              + without.entrySet().stream()
                  .map(kind -> kind.getKey() + " in " + Listing.of(kind.getValue()))
                  .collect(Collectors.joining("; "))
              + ". For details of one condition run \"rillwright stream\" with its changes.");
    } else if (least.isPresent() && Double.isFinite(room)) {
      page.paragraph(
          name
              + " has the least margin in "
              + PlainText.quoted(least.get())
              + ": running it stands "
              + units.depth(room)
              + " above the level at which it starves.");
    }
  }
}
