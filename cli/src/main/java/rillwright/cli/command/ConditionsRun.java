package rillwright.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.condition.InCondition;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.report.Solved;
import rillwright.cli.report.conditions.ConditionsAnswer;
import rillwright.cli.report.conditions.NamedCondition;
import rillwright.cli.report.conditions.Outcome;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyStateFinder;

/** Solves a project in conditions. */
final class ConditionsRun {
  private ConditionsRun() {}

  /**
   * What comes of a project in the conditions asked for.
   *
   * @param arguments that the project was read from
   */
  static ConditionsAnswer of(
      Project project, ProjectArguments arguments, ConditionArguments asked) {
    ProjectConditions conditions =
        ProjectConditions.of(project, ProjectReader.mappingBeside(arguments.file()), asked.names());
    List<Outcome> outcomes = new ArrayList<>();
    for (InCondition inCondition : conditions.projects()) {
      requireChosen(inCondition);
      outcomes.add(outcome(inCondition));
    }
    return new ConditionsAnswer(
        project.title(),
        Shown.of(project),
        arguments.changes(),
        project.network(),
        conditions.offered(),
        outcomes);
  }

  private static void requireChosen(InCondition inCondition) {
    try {
      ChosenPumps.require(inCondition.project());
    } catch (InvalidInput wrong) {
      throw inCondition.condition().tell(wrong);
    }
  }

  private static Outcome outcome(InCondition inCondition) {
    Project project = inCondition.project();
    NamedCondition named = StudyConditions.named(inCondition.condition());
    try {
      Solved solved =
          Solved.of(
              project.title(),
              Shown.of(project),
              project.running(),
              SteadyStateFinder.find(project.network()));
      return new Outcome(named, Optional.of(solved), Optional.empty());
    } catch (NoBalance none) {
      return new Outcome(named, Optional.empty(), Optional.of(NoBalanceWords.of(none)));
    }
  }
}
