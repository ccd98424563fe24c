package rillwright.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rillwright.cli.file.Project;
import rillwright.cli.file.condition.InCondition;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.report.conditions.Case;
import rillwright.cli.report.conditions.Cases;
import rillwright.cli.report.conditions.NamedCondition;
import rillwright.solver.steady.NoBalance;

/** Makes a study of a project in conditions. */
final class CasesRun {
  private CasesRun() {}

  /**
   * What the study tells of a project in the conditions asked for.
   *
   * @param arguments that the project was read from
   * @param study of a project in one condition
   * @throws InvalidInput if a condition is wrong, not there, or the study cannot be made in one
   */
  static <A> Cases<A> of(
      Project project,
      ProjectArguments arguments,
      ConditionArguments asked,
      Function<Project, A> study) {
    ProjectConditions conditions = ProjectConditions.of(project, asked.names());
    List<Case<A>> cases = new ArrayList<>();
    for (InCondition inCondition : conditions.projects()) {
      try {
        ChosenPumps.require(inCondition.project());
        cases.add(caseOf(inCondition, study));
      } catch (InvalidInput wrong) {
        throw inCondition.condition().tell(wrong);
      }
    }
    return new Cases<>(
        project.title(), Shown.of(project), arguments.changes(), conditions.offered(), cases);
  }

  private static <A> Case<A> caseOf(InCondition inCondition, Function<Project, A> study) {
    NamedCondition named = StudyConditions.named(inCondition.condition());
    try {
      return new Case<>(named, Optional.of(study.apply(inCondition.project())), Optional.empty());
    } catch (NoBalance none) {
      return new Case<>(named, Optional.empty(), Optional.of(NoBalanceWords.of(none)));
    }
  }
}
