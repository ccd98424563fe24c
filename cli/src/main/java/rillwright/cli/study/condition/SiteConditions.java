package rillwright.cli.study.condition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.file.condition.InCondition;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.study.condition.JudgingConditions.InTheWay;
import rillwright.solver.trial.SiteState;

/** The conditions that judge the choices of a study; none if none were asked for. */
public final class SiteConditions {
  private final Optional<ProjectConditions> conditions;

  private SiteConditions(Optional<ProjectConditions> conditions) {
    this.conditions = conditions;
  }

  /**
   * The conditions of a project that are asked for.
   *
   * @param asked their names, none for all; empty if it is judged as it stands
   * @throws rillwright.cli.file.fault.InvalidInput if a condition is wrong or not there
   */
  public static SiteConditions of(Project project, Optional<List<String>> asked) {
    return new SiteConditions(asked.map(names -> ProjectConditions.of(project, names)));
  }

  /**
   * A project, such as this one with another size of pipe, in each of the conditions.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if it is wrong in one of them
   */
  public List<SiteState> states(Project project) {
    return inEach(project)
        .map(state -> new SiteState(state.condition().name(), state.project().network()))
        .toList();
  }

  /**
   * The same with all that the file says of it.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if it is wrong in one of them
   */
  public Stream<Project> projects(Project project) {
    return inEach(project).map(InCondition::project);
  }

  private Stream<InCondition> inEach(Project project) {
    return conditions.map(all -> all.ofAnother(project)).orElse(List.of()).stream();
  }

  /**
   * This project with changes in each of them but as written, by name; empty where that cannot be.
   */
  public Map<String, Optional<Project>> ofChanged(Project changed) {
    return conditions.map(all -> all.ofChanged(changed)).orElse(Map.of());
  }

  /**
   * How they are reported; empty if none were asked for.
   *
   * @param tried addresses, or what they begin with, of what the study tries itself
   */
  public Optional<JudgingConditions> shown(List<String> tried) {
    return conditions.map(all -> shown(all, tried));
  }

  private static JudgingConditions shown(ProjectConditions all, List<String> tried) {
    List<NamedCondition> named =
        all.projects().stream().map(state -> NamedCondition.of(state.condition())).toList();
    return new JudgingConditions(
        all.offered(),
        named,
        named.stream().flatMap(condition -> inTheWay(condition, tried)).toList());
  }

  private static Stream<InTheWay> inTheWay(NamedCondition condition, List<String> tried) {
    return condition.changes().stream()
        .filter(change -> tried.stream().anyMatch(change.quantity()::startsWith))
        .map(change -> new InTheWay(condition.name(), change));
  }
}
