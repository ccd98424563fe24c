package rillwright.solver.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.finding.Figure.Unit;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.finding.Wording;
import rillwright.solver.network.Fall;
import rillwright.solver.network.PointName;
import rillwright.solver.stream.FirstFill.Item;

/**
 * Water that does not come home: what stays where it can freeze, and what a blockage leads away.
 */
final class StrayWaterFindings {
  private static final List<Item> STAYING =
      List.of(Item.PIPES, Item.POOLS, Item.GRAVEL, Item.BOXES);

  private static final double MINUTE_S = 60;

  private final RunningWater running;
  private final LevelBudget budget;
  private final WaterSources sources;
  private final PointName basin;

  StrayWaterFindings(RunningWater running, LevelBudget budget) {
    this.running = running;
    this.budget = budget;
    this.sources = new WaterSources(running.state());
    this.basin = budget.basin().name();
  }

  List<Finding> list() {
    List<Finding> findings = new ArrayList<>();
    for (Fall fall : running.state().network().points(Fall.class)) {
      double flow = running.state().point(fall.name()).outflowM3PerS();
      if (flow > 0 && sources.isFrom(basin, fall.name())) {
        findings.add(ifBlocked(fall.name(), flow));
      }
    }
    List<Item> staying = STAYING.stream().filter(item -> stays(item) > 0).toList();
    if (!staying.isEmpty()) {
      findings.add(canFreeze(staying));
    }
    return findings;
  }

  private double stays(Item item) {
    return budget.firstFill().volumeM3().getOrDefault(item, 0.0);
  }

  private Finding canFreeze(List<Item> staying) {
    List<Double> partsM3 = staying.stream().map(this::stays).toList();
    Finding finding =
        Finding.of(Severity.NOTE, "can-freeze", basin.value(), "After a stop ")
            .volume("comesBack", stays(Item.TRANSIT))
            .then(" run back to \"" + basin.value() + "\" and ")
            .volume("stays", partsM3.stream().mapToDouble(part -> part).sum())
            .then(" stay");
    for (int i = 0; i < partsM3.size(); i++) {
      String figure = staying.get(i).name().toLowerCase(Locale.ROOT);
      int part = i;
      finding =
          finding
              .then((i == 0 ? ": in " : ", in ") + figure + " ")
              .figure(
                  figure,
                  partsM3.get(i),
                  Unit.CUBIC_METRE,
                  wording -> wording.volumes(partsM3).get(part));
    }
    return finding.then(
        ". Where it freezes, drain what stays before the frost; water that a check valve holds"
            + " uphill comes down when it is opened.");
  }

  private Finding ifBlocked(PointName fall, double flowM3PerS) {
    Optional<String> pools =
        running.streams().stream()
            .map(StreamState::stream)
            .filter(stream -> stream.from().equals(fall))
            .filter(stream -> stream.items().stream().anyMatch(Pool.class::isInstance))
            .map(Stream::name)
            .findFirst();
    Finding finding =
        Finding.of(
                Severity.NOTE,
                "if-blocked",
                fall.value(),
                "If leaves or ice block the crest of \""
                    + fall.value()
                    + "\""
                    + pools.map(name -> " or a pool of \"" + name + "\"").orElse("")
                    + ", ")
            .flow("flow", flowM3PerS)
            .then(" run over the edge there");
    OptionalDouble seconds = secondsToStarve(flowM3PerS);
    return seconds.isEmpty()
        ? finding.then(". Check where that water would go.")
        : finding
            .then("; if they do not come back to \"" + basin.value() + "\", it is down in ")
            .figure(
                "timeToStarve",
                seconds.getAsDouble(),
                Unit.SECOND,
                wording -> inWords(wording, seconds.getAsDouble()))
            .then(
                budget.starve().get().drawsAir()
                    ? " to the level at which the pump draws air."
                    : " to the level at which its skimmer starves the pump.")
            .then(" Check where that water would go.");
  }

  private static String inWords(Wording wording, double seconds) {
    return seconds < MINUTE_S ? "less than a minute" : wording.duration(seconds);
  }

  /** How long the basin lasts from its running level; empty where nothing tells it. */
  private OptionalDouble secondsToStarve(double flowM3PerS) {
    double volume = budget.volumeToStarveM3().orElse(0);
    return volume > 0 ? OptionalDouble.of(volume / flowM3PerS) : OptionalDouble.empty();
  }
}
