package rillwright.cli.report.text.stream;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.Reach;
import rillwright.solver.stream.StreamState;

/** The pieces of a stream, from the fall home. */
final class ReachesTable {
  private static final String NONE = "";

  /** Less than this share of a flow is not worth a word. */
  private static final double SEEN_SHARE = 0.01;

  private final StreamState state;
  private final ShownUnits units;
  private final String atRest;

  /**
   * The table.
   *
   * @param toppedUp the same stream with the basins kept at their levels at rest
   */
  ReachesTable(StreamState state, StreamState toppedUp, ShownUnits units) {
    this.state = state;
    this.units = units;
    double kept = toppedUp.flowM3PerS();
    this.atRest =
        Math.abs(kept - state.flowM3PerS()) < SEEN_SHARE * kept
            ? ""
            : "; at the levels at rest, as other answers have them, it is " + units.flow(kept);
  }

  void print(PageBuilder page) {
    TableBuilder table =
        new TableBuilder("STREAM \"" + state.stream().name() + "\"")
            .column("falls", Side.RIGHT)
            .column("depth", Side.RIGHT)
            .column("speed", Side.RIGHT)
            .column("width", Side.RIGHT)
            .column("Froude", Side.RIGHT)
            .column("critical", Side.RIGHT)
            .column("holds", Side.RIGHT);
    int number = 0;
    for (ItemState item : state.items()) {
      number++;
      table.row(
          number + ": " + words(item),
          item.item().dropM() > 0 ? units.depth(item.item().dropM()) : NONE,
          item.depthM() > 0 ? units.depth(item.depthM()) : "dry",
          shown(item.velocityMPerS(), units::velocity),
          shown(item.surfaceWidthM(), units::depth),
          shown(item.froude(), froude -> String.format(Locale.ROOT, "%.2f", froude)),
          shown(item.criticalDepthM(), units::depth),
          item.volumeM3() + item.gravelM3() > 0
              ? units.volume(item.volumeM3() + item.gravelM3())
              : NONE);
    }
    page.table(table);
    page.paragraph(
        units.flow(state.flowM3PerS())
            + " runs from \""
            + state.stream().from().value()
            + "\" to \""
            + state.stream().to().value()
            + "\", with open water at the levels that it runs at"
            + atRest
            + ". Froude number: below 1 the water"
            + " runs calmly, above 1 it shoots, thin and fast. Critical: the depth at which it is"
            + " 1, as over a drop. Water held includes the gravel of a reach; a pool holds what"
            + " stands above its crest, a step holds none.");
  }

  private String words(ItemState item) {
    if (item.item() instanceof Reach reach) {
      return "reach, " + units.length(reach.lengthM());
    }
    return item.item().kind();
  }

  private static String shown(OptionalDouble number, DoubleFunction<String> words) {
    return number.isPresent() && number.getAsDouble() > 0
        ? words.apply(number.getAsDouble())
        : NONE;
  }
}
