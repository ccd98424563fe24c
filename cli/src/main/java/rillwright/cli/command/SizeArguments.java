package rillwright.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.pricing.LineMaterial;
import rillwright.cli.wording.Choices;
import rillwright.cli.wording.PlainText;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;
import rillwright.solver.study.pipechoice.PipeOption;
import rillwright.solver.study.pipechoice.PipeOption.Size;

/** Which lines a command tries in which sizes. */
final class SizeArguments {
  private static final int MOST_OPTIONS = 500;

  @Option(
      names = "--line",
      paramLabel = "NAME",
      required = true,
      description =
          "The line whose pipe is asked for; given several times, all of them take one size, as in one"
              + " trench.")
  private List<String> lines = List.of();

  @Option(
      names = "--sizes",
      paramLabel = "SIZES",
      required = true,
      description = "Sizes to try, of the lines' material, with commas between.")
  private String sizes = "";

  @Option(names = "--each", description = "Lets each line take a size of its own.")
  private boolean each;

  /** What is tried: the options, and what of their material has no price. */
  record Tried(List<PipeOption> options, List<String> unpriced) {}

  /**
   * The options of a project.
   *
   * @param file the project's
   * @param changes made on the command line
   * @throws InvalidInput if a line or a size is not known
   */
  Tried read(Project project, Path file, List<String> changes) {
    Map<LineName, List<PipeSize>> known = new LinkedHashMap<>();
    for (String name : new LinkedHashSet<>(lines)) {
      known.put(new LineName(name), sizesOf(name, material(project, name)));
    }
    List<Map<LineName, PipeSize>> combinations = each ? free(known) : together(known);
    List<PipeOption> options = new ArrayList<>();
    Set<String> unpriced = new LinkedHashSet<>();
    for (Map<LineName, PipeSize> combination : combinations) {
      List<String> all = new ArrayList<>(changes);
      combination.forEach((line, pipe) -> all.add(change(line, pipe)));
      Network network = ProjectReader.read(file, all).network();
      List<Line> changed = combination.keySet().stream().map(network::line).toList();
      LineMaterial material = LineMaterial.of(changed, project.prices());
      unpriced.addAll(material.unpriced());
      Map<LineName, Size> named = new LinkedHashMap<>();
      combination.forEach((line, pipe) -> named.put(line, new Size(pipe.size(), pipe.insideM())));
      options.add(new PipeOption(named, network, material.cost()));
    }
    requireEffect(project, options);
    return new Tried(options, List.copyOf(unpriced));
  }

  private static String change(LineName line, PipeSize pipe) {
    char quote = line.value().indexOf('"') < 0 ? '"' : '\'';
    return "lines." + quote + line.value() + quote + ".pipe.size=" + pipe.size();
  }

  /** The material of a line's pipe. */
  private static String material(Project project, String name) {
    List<String> names =
        project.network().lines().stream().map(line -> line.name().value()).toList();
    if (!names.contains(name)) {
      throw new InvalidInput(
          project.places().whole(),
          "no line is called " + PlainText.quoted(name) + Choices.hint(name, names));
    }
    return find(Optional.of(project.tree()), "lines")
        .flatMap(tree -> find(Optional.of(tree), name))
        .flatMap(line -> find(Optional.of(line), "pipe"))
        .flatMap(pipe -> find(Optional.of(pipe), "material"))
        .filter(Scalar.class::isInstance)
        .map(node -> ((Scalar) node).text())
        .orElseThrow(
            () ->
                new InvalidInput(
                    project.places().ofLine(new LineName(name)),
                    "line "
                        + PlainText.quoted(name)
                        + ": its pipe names no material, so a size has no meaning; write for example"
                        + " \"pipe: {material: flexible PVC, size: 2 in}\""));
  }

  private static Optional<Node> find(Optional<Node> node, String key) {
    return node.filter(MapNode.class::isInstance)
        .flatMap(map -> ((MapNode) map).find(key))
        .map(Entry::value);
  }

  private List<PipeSize> sizesOf(String line, String material) {
    Place place = Place.whole("--sizes \"" + sizes + "\"");
    Map<String, PipeSize> found = new LinkedHashMap<>();
    for (String written : sizes.split(",", -1)) {
      String size = written.strip();
      PipeSize pipe =
          Catalogue.standard()
              .findPipe(material, size)
              .orElseThrow(
                  () ->
                      new InvalidInput(
                          place,
                          PlainText.quoted(size)
                              + " is not a size of "
                              + PlainText.harmless(material)
                              + ", the material of line "
                              + PlainText.quoted(line)
                              + Choices.hint(size, Catalogue.standard().sizesOf(material))));
      found.put(pipe.size(), pipe);
    }
    return List.copyOf(found.values());
  }

  private static List<Map<LineName, PipeSize>> together(Map<LineName, List<PipeSize>> known) {
    int count = known.values().iterator().next().size();
    List<Map<LineName, PipeSize>> combinations = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Map<LineName, PipeSize> combination = new LinkedHashMap<>();
      for (Map.Entry<LineName, List<PipeSize>> line : known.entrySet()) {
        combination.put(line.getKey(), line.getValue().get(i));
      }
      combinations.add(combination);
    }
    return combinations;
  }

  private List<Map<LineName, PipeSize>> free(Map<LineName, List<PipeSize>> known) {
    List<Map<LineName, PipeSize>> combinations = List.of(Map.of());
    for (Map.Entry<LineName, List<PipeSize>> line : known.entrySet()) {
      List<Map<LineName, PipeSize>> longer = new ArrayList<>();
      for (Map<LineName, PipeSize> before : combinations) {
        for (PipeSize pipe : line.getValue()) {
          Map<LineName, PipeSize> combination = new LinkedHashMap<>(before);
          combination.put(line.getKey(), pipe);
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
                + ": nothing in it changes with the size of its pipe, because its runs name sizes of"
                + " their own; leave those out");
      }
    }
  }

  private static List<Part> runs(Line line) {
    return line.parts().stream().filter(Run.class::isInstance).toList();
  }
}
