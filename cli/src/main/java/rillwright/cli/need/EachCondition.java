package rillwright.cli.need;

import java.util.List;
import java.util.function.Consumer;
import rillwright.cli.file.Project;
import rillwright.cli.file.condition.InCondition;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.file.fault.InvalidInput;

/** Refuses projects that do not fit a study in one of their conditions. */
public final class EachCondition {
  private EachCondition() {}

  /**
   * Throws for the first condition that does not fit, and names it.
   *
   * @param names of conditions; none for all
   * @param fit refuses a project that does not fit
   */
  public static void require(Project project, List<String> names, Consumer<Project> fit) {
    for (InCondition one : ProjectConditions.of(project, names).projects()) {
      try {
        fit.accept(one.project());
      } catch (InvalidInput wrong) {
        throw one.condition().tell(wrong);
      }
    }
  }
}
