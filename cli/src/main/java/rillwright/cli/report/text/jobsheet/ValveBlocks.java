package rillwright.cli.report.text.jobsheet;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.HandleWords;
import rillwright.cli.report.page.Handle;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.balance.BalanceText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Valve;

/** How valves are to stand, with their handles. */
final class ValveBlocks {
  private ValveBlocks() {}

  /** The settings, how to set them, and the handles. */
  static void print(BalanceAnswer settings, PageBuilder page) {
    BalanceText.settings(settings, page);
    List<Handle> handles =
        settings.settings().valves().stream()
            .map(set -> handle(set.place().line().value(), set.valve(), Shown.of(settings)))
            .filter(handle -> handle.degreesFromOpen().isPresent())
            .toList();
    if (!handles.isEmpty()) {
      page.show(new Head.Handles(handles));
    }
  }

  /** The handles of all valves of a network whose setting is known. */
  static List<Handle> handles(Network network, ShownUnits units) {
    return network.placed(Valve.class).stream()
        .filter(placed -> isKnown(placed.part()))
        .map(placed -> handle(name(placed), placed.part(), units))
        .toList();
  }

  private static boolean isKnown(Valve valve) {
    return valve.isShut() || valve.loss().opening().isPresent();
  }

  private static String name(Placed<Valve> placed) {
    String line = placed.line().name().value();
    long before =
        placed.line().placed(Valve.class).stream()
            .filter(other -> other.index() <= placed.index())
            .count();
    return before == 1 ? line : line + ", valve " + before;
  }

  private static Handle handle(String name, Valve valve, ShownUnits units) {
    OptionalDouble degrees = valve.loss().degreesFromOpen();
    String words;
    if (valve.isShut()) {
      words = "shut";
    } else if (degrees.isPresent()) {
      words = HandleWords.at(degrees.getAsDouble());
    } else {
      OptionalDouble open = valve.loss().opening();
      words = open.isPresent() ? units.share(open.getAsDouble()) + " open" : "as it was set";
    }
    return new Handle(name, degrees, words);
  }
}
