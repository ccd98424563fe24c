package rillwright.cli.report.text.solve;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.PartWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.ChangeOfBore;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;

/** Lines: flow, speed, the head they cost and what in them costs most. */
final class LinesTable {
  private final ShownUnits units;
  private final TableBuilder table =
      new TableBuilder("LINES")
          .column("flow", Side.RIGHT)
          .column("speed", Side.RIGHT)
          .column("head lost", Side.RIGHT)
          .column("most of it in", Side.LEFT);

  private boolean namesK;

  private LinesTable(ShownUnits units) {
    this.units = units;
  }

  static void print(Solved solved, PageBuilder page) {
    LinesTable lines = new LinesTable(Shown.of(solved));
    solved.state().lines().forEach(lines::add);
    page.table(lines.table);
    if (lines.namesK) {
      page.paragraph(PartWords.K);
    }
    for (LineState line : solved.state().lines()) {
      if (line.open() && line.flowM3PerS() < 0) {
        page.paragraph("A flow with a minus runs against the way in which its line is written.");
        return;
      }
    }
  }

  private void add(LineState line) {
    String name = line.line().name().value();
    if (!line.open()) {
      table.row(name, units.flow(0), "none", "none", "shut: carries nothing");
      return;
    }
    Map<Taking, Double> losses = losses(line);
    double sum = losses.values().stream().mapToDouble(Double::doubleValue).sum();
    OptionalDouble velocity = line.velocityMPerS();
    table.row(
        name,
        units.flow(line.flowM3PerS()),
        velocity.isPresent() ? units.velocity(velocity.getAsDouble()) : "no pipe",
        units.head(sum),
        most(losses, sum));
  }

  /** What each part takes in the direction of its flow, m; a pump takes nothing. */
  private Map<Taking, Double> losses(LineState line) {
    Map<Taking, Double> losses = new LinkedHashMap<>();
    losses.put(new Taking("its entrance", false), Math.abs(line.entranceLossM()));
    for (PartState part : line.parts()) {
      if (!(part.part() instanceof Pump)) {
        losses.merge(
            new Taking(PartWords.of(part.part(), units), PartWords.nameK(part.part())),
            Math.abs(part.headLossM().orElse(0)),
            Double::sum);
      }
    }
    for (ChangeOfBore change : line.line().changesOfBore()) {
      losses.merge(
          new Taking(PartWords.of(change, units), true),
          Math.abs(line.headLossM(change).orElse(0)),
          Double::sum);
    }
    losses.merge(new Taking("its exit", false), Math.abs(line.exitLossM()), Double::sum);
    return losses;
  }

  private String most(Map<Taking, Double> losses, double sum) {
    Map.Entry<Taking, Double> largest =
        Collections.max(losses.entrySet(), Map.Entry.comparingByValue());
    if (largest.getValue() == 0) {
      return "nothing";
    }
    namesK |= largest.getKey().namesK();
    return largest.getKey().words() + ": " + units.share(largest.getValue() / sum);
  }

  /**
   * What takes head.
   *
   * @param namesK whether its words name the K of a part
   */
  private record Taking(String words, boolean namesK) {}
}
