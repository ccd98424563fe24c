package rillwright.cli.report.text;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.Project;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.stream.Pool;

/** What to keep in mind at this job, and nothing that belongs to others. */
public final class Cautions {
  private static final String SUCTION =
      "Never leave an open suction where a person or child can reach it: keep the cage or screen"
          + " on.";
  private static final String OPEN_WATER =
      "Any open water can drown a small child; keep watch while covers and grates are off.";
  private static final String CODES = "Local codes and licensed professionals decide.";

  private Cautions() {}

  /** All of a job, a sentence each. */
  public static List<String> of(Project project) {
    Network network = project.network();
    List<String> all = new ArrayList<>();
    if (network.lines().stream().anyMatch(line -> line.has(Run.class))) {
      all.add(SiteCautions.DIGGING);
    }
    if (isPumped(network)) {
      all.add(SiteCautions.WIRING);
    }
    all.addAll(ofWater(project));
    return all;
  }

  /** Those that hold once all is built. */
  public static List<String> ofWater(Project project) {
    Network network = project.network();
    List<String> all = new ArrayList<>();
    if (isPumped(network)) {
      all.add(SUCTION);
    }
    if (hasOpenWater(network)) {
      all.add(OPEN_WATER);
    }
    boolean pools =
        project.streams().streams().stream()
            .flatMap(stream -> stream.items().stream())
            .anyMatch(Pool.class::isInstance);
    if (pools || !isPumped(network) || network.points(Basin.class).size() > 1) {
      all.add(SiteCautions.UPHILL);
    }
    all.add(CODES);
    return all;
  }

  /** Whether somebody may fall or reach into water: an open basin, or a chamber. */
  public static boolean hasOpenWater(Network network) {
    return network.points(Basin.class).stream().anyMatch(Cautions::isOpen)
        || !network.points(Chamber.class).isEmpty();
  }

  /** Whether a pump stands or will stand somewhere. */
  public static boolean isPumped(Network network) {
    return network.lines().stream().anyMatch(Cautions::isPumped);
  }

  private static boolean isPumped(Line line) {
    return line.has(Pump.class) || line.has(PlannedPump.class);
  }

  /** A basin from which nothing evaporates is covered. */
  private static boolean isOpen(Basin basin) {
    return basin.evaporatesM2().orElse(1) > 0;
  }
}
