package rillwright.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import picocli.CommandLine.Option;
import rillwright.cli.command.LineSizes.Sized;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.pricing.LineMaterial;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;
import rillwright.solver.study.pipechoice.PipeOption;
import rillwright.solver.study.pipechoice.PipeOption.Size;
import rillwright.solver.trial.SiteState;

/** Which lines a command tries in which sizes. */
final class SizeArguments {
  private static final int MOST_OPTIONS = 500;

  @Option(
      names = "--line",
      paramLabel = "NAME",
      required = true,
      description =
          "The line whose pipe is asked for; given several times, all of them take one size, as in"
              + " one trench.")
  private List<String> lines = List.of();

  @Option(
      names = "--sizes",
      paramLabel = "SIZES",
      required = true,
      description =
          "Sizes to try, with commas between: of the lines' material, or inside diameters where"
              + " their pipe is given by that.")
  private String sizes = "";

  @Option(names = "--each", description = "Lets each line take a size of its own.")
  private boolean each;

  /** Names of the lines, as written. */
  List<String> lines() {
    return lines;
  }

  /**
   * What is tried: the options, what pipe has no price, and what fittings do not count for want of
   * one.
   */
  record Tried(List<PipeOption> options, List<String> unpriced, List<String> uncounted) {}

  /**
   * The options of a project.
   *
   * @param states of a project in the conditions that judge it
   * @throws InvalidInput if a line or a size is not known
   */
  Tried read(Project project, Function<Project, List<SiteState>> states) {
    Map<LineName, List<Sized>> known = new LinkedHashMap<>();
    for (String name : new LinkedHashSet<>(lines)) {
      requireRun(project, name);
      known.put(new LineName(name), sizesOf(new LineSizes(project, name)));
    }
    List<PipeOption> options = new ArrayList<>();
    Set<String> unpriced = new LinkedHashSet<>();
    Set<String> uncounted = new LinkedHashSet<>();
    for (Map<LineName, Sized> combination : each ? free(known) : together(known)) {
      Project sized =
          project.with(
              combination.values().stream().flatMap(size -> size.changes().stream()).toList());
      Network network = sized.network();
      List<Line> changed = combination.keySet().stream().map(network::line).toList();
      LineMaterial material = LineMaterial.of(changed, project.prices());
      unpriced.addAll(material.unpriced());
      uncounted.addAll(material.uncounted());
      Map<LineName, Size> named = new LinkedHashMap<>();
      combination.forEach((line, size) -> named.put(line, size.size()));
      options.add(new PipeOption(named, network, states.apply(sized), material.cost()));
    }
    requireEffect(project, options);
    return new Tried(options, List.copyOf(unpriced), List.copyOf(uncounted));
  }

  private List<Sized> sizesOf(LineSizes line) {
    Place place = Place.whole("--sizes \"" + sizes + "\"");
    Map<String, Sized> found = new LinkedHashMap<>();
    for (String written : sizes.split(",", -1)) {
      Sized sized = line.read(written.strip(), place);
      found.put(sized.size().name(), sized);
    }
    return List.copyOf(found.values());
  }

  private static List<Map<LineName, Sized>> together(Map<LineName, List<Sized>> known) {
    int count = known.values().iterator().next().size();
    List<Map<LineName, Sized>> combinations = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Map<LineName, Sized> combination = new LinkedHashMap<>();
      for (Map.Entry<LineName, List<Sized>> line : known.entrySet()) {
        combination.put(line.getKey(), line.getValue().get(i));
      }
      combinations.add(combination);
    }
    return combinations;
  }

  private static List<Map<LineName, Sized>> free(Map<LineName, List<Sized>> known) {
    List<Map<LineName, Sized>> combinations = List.of(Map.of());
    for (Map.Entry<LineName, List<Sized>> line : known.entrySet()) {
      List<Map<LineName, Sized>> longer = new ArrayList<>();
      for (Map<LineName, Sized> before : combinations) {
        for (Sized sized : line.getValue()) {
          Map<LineName, Sized> combination = new LinkedHashMap<>(before);
          combination.put(line.getKey(), sized);
          longer.add(combination);
        }
      }
      combinations = longer;
      if (combinations.size() > MOST_OPTIONS) {
        throw new InvalidInput(
            Place.whole("--each"),
            "these are more than "
                + MOST_OPTIONS
                + " ways; name fewer lines or sizes, or leave --each out");
      }
    }
    return combinations;
  }

  /** Refuses a line without pipe. */
  private static void requireRun(Project project, String name) {
    for (Line line : project.network().lines()) {
      if (line.name().value().equals(name) && runs(line).isEmpty()) {
        throw new InvalidInput(
            project.places().ofLine(line.name()),
            "line "
                + PlainText.quoted(name)
                + " has no run of pipe, so a size has no meaning there; write for example \"- run:"
                + " 38 ft\" among its parts, or name another line");
      }
    }
  }

  /** Refuses a line in which no pipe changes with the size. */
  private static void requireEffect(Project project, List<PipeOption> options) {
    for (LineName name : options.get(0).sizes().keySet()) {
      List<String> sizes =
          options.stream().map(it -> it.sizes().get(name).name()).distinct().toList();
      List<List<Part>> different =
          options.stream().map(it -> runs(it.network().line(name))).distinct().toList();
      if (different.size() < sizes.size()) {
        throw new InvalidInput(
            project.places().ofLine(name),
            "line "
                + PlainText.quoted(name.value())
                + ": nothing in it changes with the size of its pipe, because its runs name sizes"
                + " of their own; leave those out");
      }
    }
  }

  private static List<Part> runs(Line line) {
    return line.parts().stream().filter(Run.class::isInstance).toList();
  }
}
