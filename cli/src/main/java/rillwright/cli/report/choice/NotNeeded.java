package rillwright.cli.report.choice;

import java.util.List;
import java.util.stream.Collectors;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;

/** What to say where the targets, throttled, ask next to nothing of a pump. */
public final class NotNeeded {
  private NotNeeded() {}

  /**
   * A sentence.
   *
   * @param place of the pump that is not needed
   */
  public static String sentence(Network network, PumpPlace place) {
    List<String> others =
        PumpPlace.listChosen(network).stream()
            .filter(other -> !other.equals(place))
            .map(other -> PlainText.quoted(other.line().value()))
            .toList();
    String does =
        switch (others.size()) {
          case 0 -> "every fall gets its target without a pump";
          case 1 -> "the pump in " + others.get(0) + " alone gives every fall its target";
          default ->
              "the pumps in "
                  + others.stream().collect(Collectors.joining(" and "))
                  + " alone give every fall its target";
        };
    return "Once the falls that get too much are throttled, "
        + does
        + ": none is needed in "
        + PlainText.quoted(place.line().value())
        + ". There it would run against a closed line, drawing power and moving no water.";
  }
}
