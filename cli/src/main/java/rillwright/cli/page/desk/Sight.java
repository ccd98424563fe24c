package rillwright.cli.page.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.change.FormerNames;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

/**
 * What a text says.
 *
 * @param text of a project
 * @param tree of it; empty if it is no YAML or JSON
 * @param project that it is; empty if something is wrong
 * @param faults all that is wrong
 */
public record Sight(
    String text, Optional<MapNode> tree, Optional<Project> project, List<Fault> faults) {
  public Sight {
    faults = List.copyOf(faults);
  }

  /**
   * Reads a text.
   *
   * @param file where it lies or is to lie
   */
  public static Sight of(String text, Path file) {
    try {
      Project project = ProjectReader.of(text, file);
      return new Sight(text, Optional.of(project.tree()), Optional.of(project), List.of());
    } catch (InvalidInput wrong) {
      return faulty(text, file, wrong);
    }
  }

  /**
   * The project.
   *
   * @throws InvalidInput with all that is wrong, if something is
   */
  Project require() {
    return project.orElseThrow(() -> new InvalidInput(faults));
  }

  private static Sight faulty(String text, Path file, InvalidInput wrong) {
    try {
      MapNode tree = TreeReader.read(new SourceText(file.toString(), text));
      return new Sight(
          text, Optional.of(FormerNames.renewedIn(tree)), Optional.empty(), wrong.faults());
    } catch (InvalidInput noTree) {
      return new Sight(text, Optional.empty(), Optional.empty(), noTree.faults());
    }
  }
}
