package rillwright.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.file.condition.Condition;
import rillwright.cli.file.condition.InCondition;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.report.conditions.JudgingConditions;
import rillwright.cli.report.conditions.NamedCondition;
import rillwright.cli.report.conditions.NamedCondition.Changed;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.trial.SiteState;

/** The conditions that judge the choices of a study; none if none were asked for. */
final class StudyConditions {
  private final Optional<ProjectConditions> conditions;
  private final Optional<PumpPlace> place;

  private StudyConditions(Optional<ProjectConditions> conditions, Optional<PumpPlace> place) {
    this.conditions = conditions;
    this.place = place;
  }

  /**
   * The conditions of a project that are asked for.
   *
   * @param place of the pump that the study is about; empty if there is no pump
   * @throws InvalidInput if a condition is wrong or not there
   */
  static StudyConditions of(ConditionArguments asked, Project project, Optional<PumpPlace> place) {
    Optional<ProjectConditions> conditions =
        asked.areAsked()
            ? Optional.of(ProjectConditions.of(project, asked.names()))
            : Optional.empty();
    return new StudyConditions(conditions, place);
  }

  /**
   * A project, such as this one with another size of pipe, in each of the conditions.
   *
   * @throws InvalidInput if the study can not be made in one of them
   */
  List<SiteState> states(Project project) {
    List<SiteState> states = new ArrayList<>();
    if (conditions.isPresent()) {
      for (InCondition state : conditions.get().ofAnother(project)) {
        try {
          requireFit(state);
        } catch (InvalidInput wrong) {
          throw state.condition().tell(wrong);
        }
        states.add(new SiteState(state.condition().name(), state.project().network()));
      }
    }
    return states;
  }

  private void requireFit(InCondition state) {
    Wished.require(state.project());
    if (place.isPresent()) {
      requirePump(state, place.get());
    }
  }

  private static void requirePump(InCondition state, PumpPlace place) {
    Project project = state.project();
    Network network = project.network();
    if (!PumpPlace.listPlanned(network).contains(place)
        && !PumpPlace.listChosen(network).contains(place)) {
      throw new InvalidInput(
          project.places().whole(),
          "it moves or takes away the pump of line "
              + PlainText.quoted(place.line().value())
              + ", which is to be chosen; leave that pump in its place");
    }
    OtherPumps.requireChosen(project, place);
  }

  /**
   * How they are told; empty if none were asked for.
   *
   * @param tried addresses, or what they begin with, of what the study tries itself
   */
  Optional<JudgingConditions> told(List<String> tried) {
    return conditions.map(all -> told(all, tried));
  }

  private static JudgingConditions told(ProjectConditions all, List<String> tried) {
    List<NamedCondition> named =
        all.projects().stream().map(state -> named(state.condition())).toList();
    return new JudgingConditions(
        all.offered(),
        named,
        named.stream().flatMap(condition -> inTheWay(condition, tried)).toList());
  }

  private static Stream<String> inTheWay(NamedCondition condition, List<String> tried) {
    return condition.changes().stream()
        .filter(change -> tried.stream().anyMatch(change.quantity()::startsWith))
        .map(
            change ->
                PlainText.quoted(condition.name())
                    + ": "
                    + change.quantity()
                    + " "
                    + change.value());
  }

  /** A condition as it is told. */
  static NamedCondition named(Condition condition) {
    return new NamedCondition(
        condition.name(),
        condition.changes().stream()
            .map(change -> new Changed(change.address(), change.value()))
            .toList());
  }
}
