package rillwright.cli.command.argument;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Option;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.size.LineSizes;
import rillwright.cli.file.size.SizeOption;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;

/** Which lines a command tries in which sizes. */
public final class SizeArguments {
  private static final int MOST_OPTIONS = 500;

  @Option(
      names = "--line",
      paramLabel = "LINE",
      required = true,
      description =
          "Studies the pipe of this line; repeatable, all of them take one size, as in one trench.")
  private List<String> lines = List.of();

  @Option(
      names = "--sizes",
      paramLabel = "SIZES",
      required = true,
      description =
          "Sizes to try, with commas between: of the lines' material, or inside diameters where"
              + " their pipe is given by that.")
  private String sizes = "";

  @Option(names = "--independent", description = "Varies the size of each line by itself.")
  private boolean each;

  /** Names of the lines, as written. */
  public List<String> lines() {
    return lines;
  }

  /**
   * The options of a project.
   *
   * @throws InvalidInput if a line or a size is not known
   */
  public List<SizeOption> in(Project project) {
    List<List<SizeOption>> known = new ArrayList<>();
    for (String name : new LinkedHashSet<>(lines)) {
      requireRun(project, name);
      known.add(sizesOf(new LineSizes(project, name)));
    }
    return each ? free(known) : together(known);
  }

  private List<SizeOption> sizesOf(LineSizes line) {
    Place place = Place.whole("--sizes \"" + sizes + "\"");
    Set<SizeOption> found = new LinkedHashSet<>();
    for (String written : sizes.split("[,;]", -1)) {
      found.add(line.read(written.strip(), place));
    }
    return List.copyOf(found);
  }

  private static List<SizeOption> together(List<List<SizeOption>> known) {
    List<SizeOption> combinations = known.get(0);
    for (List<SizeOption> line : known.subList(1, known.size())) {
      List<SizeOption> longer = new ArrayList<>();
      for (int i = 0; i < line.size(); i++) {
        longer.add(combinations.get(i).and(line.get(i)));
      }
      combinations = longer;
    }
    return combinations;
  }

  private static List<SizeOption> free(List<List<SizeOption>> known) {
    List<SizeOption> combinations = known.get(0);
    for (List<SizeOption> line : known.subList(1, known.size())) {
      List<SizeOption> longer = new ArrayList<>();
      for (SizeOption before : combinations) {
        line.forEach(size -> longer.add(before.and(size)));
      }
      combinations = longer;
      if (combinations.size() > MOST_OPTIONS) {
        throw new InvalidInput(
            Place.whole("--independent"),
            "these are more than "
                + MOST_OPTIONS
                + " ways; name fewer lines or sizes, or leave --independent out");
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
                + " has no run of pipe, so it has no size; write for example \"- run: 38 ft\""
                + " among its parts, or name another line");
      }
    }
  }

  private static List<Part> runs(Line line) {
    return line.parts().stream().filter(Run.class::isInstance).toList();
  }
}
