package rillwright.cli.bench;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.large.LargeProject;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** The networks of all cases, and their numbers. */
final class Networks {
  private Networks() {}

  /** A network by a name such as {@code LOOPS 1000}. */
  static Network of(String name) {
    String[] words = name.split(" ");
    String text = LargeProject.valueOf(words[0]).of(Integer.parseInt(words[1]));
    Project project = ProjectReader.of(text, Path.of("large.yaml"));
    return project.network();
  }

  /** The number of each point. */
  static Map<PointName, Integer> numbers(Network network) {
    Map<PointName, Integer> numbers = new HashMap<>();
    for (Point point : network.points()) {
      numbers.put(point.name(), numbers.size());
    }
    return numbers;
  }
}
