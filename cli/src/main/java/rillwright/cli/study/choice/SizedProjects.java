package rillwright.cli.study.choice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rillwright.cli.file.Project;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.pricing.LineMaterial;
import rillwright.cli.study.condition.SiteConditions;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;
import rillwright.solver.study.pipechoice.PipeOption;

/**
 * A project with each of several sizes of pipe.
 *
 * @param options in the order in which they were given
 * @param unpriced pipe that has no price
 * @param uncounted fittings that have none while others have
 */
record SizedProjects(List<PipeOption> options, List<String> unpriced, List<String> uncounted) {
  SizedProjects {
    options = List.copyOf(options);
    unpriced = List.copyOf(unpriced);
    uncounted = List.copyOf(uncounted);
  }

  static SizedProjects of(Project project, List<SizeOption> tried, SiteConditions judging) {
    List<PipeOption> options = new ArrayList<>();
    Set<String> unpriced = new LinkedHashSet<>();
    Set<String> uncounted = new LinkedHashSet<>();
    for (SizeOption option : tried) {
      Project sized = project.with(option.changes());
      Network network = sized.network();
      List<Line> changed = option.sizes().keySet().stream().map(network::line).toList();
      LineMaterial material = LineMaterial.of(changed, project.prices());
      unpriced.addAll(material.unpriced());
      uncounted.addAll(material.uncounted());
      options.add(new PipeOption(option.sizes(), network, judging.states(sized), material.cost()));
    }
    requireEffect(options);
    return new SizedProjects(options, List.copyOf(unpriced), List.copyOf(uncounted));
  }

  private static void requireEffect(List<PipeOption> options) {
    for (LineName name : options.get(0).sizes().keySet()) {
      List<String> sizes =
          options.stream().map(it -> it.sizes().get(name).name()).distinct().toList();
      List<List<Part>> different =
          options.stream().map(it -> runs(it.network().line(name))).distinct().toList();
      if (different.size() < sizes.size()) {
        throw new SizeWithoutEffect(name);
      }
    }
  }

  private static List<Part> runs(Line line) {
    return line.parts().stream().filter(Run.class::isInstance).toList();
  }
}
