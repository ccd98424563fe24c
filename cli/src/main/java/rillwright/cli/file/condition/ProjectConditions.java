package rillwright.cli.file.condition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.change.Changes;
import rillwright.cli.file.fault.FaultList;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;

/**
 * A project in all the conditions in which it is to be looked at.
 *
 * @param projects the project as written first
 * @param offered whether the file names no conditions and sensible ones are offered instead
 */
public record ProjectConditions(List<InCondition> projects, boolean offered) {
  /** With so many faults the other conditions wait: what was meant is searched for each. */
  private static final int MOST_FAULTS = 90;

  public ProjectConditions {
    projects = List.copyOf(projects);
  }

  /**
   * A project in the conditions that its file names, else in those that are offered.
   *
   * @param project as written
   * @param wanted names of the conditions asked for; empty for all
   * @throws InvalidInput if a condition is wrong or one that is wanted is not there
   */
  public static ProjectConditions of(Project project, List<String> wanted) {
    String file = project.places().whole().source();
    List<Condition> named = NamedConditions.in(project.tree(), file);
    boolean offered = named.isEmpty();
    List<Condition> all = new ArrayList<>(List.of(Condition.AS_WRITTEN));
    all.addAll(offered ? OfferedConditions.of(project) : named);
    requireKnown(wanted, all, project);
    all.removeIf(condition -> !wanted.isEmpty() && !wanted.contains(condition.name()));
    return new ProjectConditions(projects(all, project), offered);
  }

  /**
   * Another project, such as this one with another size of pipe, in the same conditions.
   *
   * @throws InvalidInput if a condition is wrong there
   */
  public List<InCondition> ofAnother(Project project) {
    return projects(projects.stream().map(InCondition::condition).toList(), project);
  }

  /**
   * This project with changes in every condition except as written: by name, empty where it cannot
   * be so. What is offered is offered to the changed one. A condition of the file is of the lines
   * that are there: a second line is added after it.
   */
  public Map<String, Optional<Project>> ofChanged(Project changed) {
    Map<String, Condition> known = new LinkedHashMap<>();
    (offered
            ? OfferedConditions.of(changed)
            : projects.stream().map(InCondition::condition).toList())
        .forEach(condition -> known.put(condition.name(), condition));
    Map<String, Optional<Project>> all = new LinkedHashMap<>();
    for (InCondition one : projects) {
      Condition condition = known.get(one.condition().name());
      if (condition != null && !condition.changes().isEmpty()) {
        all.put(condition.name(), changed(condition, one.project(), changed));
      }
    }
    return all;
  }

  /** Read as that of the project's own in the condition, of which most is as it was. */
  private Optional<Project> changed(Condition condition, Project own, Project changed) {
    List<String> more = changed.changes().subList(own.changes().size(), changed.changes().size());
    int before = offered ? more.size() : Changes.beforeASecondLine(more);
    try {
      MapNode tree =
          before == more.size() ? changed.tree() : own.with(more.subList(0, before)).tree();
      Project there = own.withTree(condition.of(tree));
      return Optional.of(
          before == more.size() ? there : there.with(more.subList(before, more.size())));
    } catch (InvalidInput cannotBeSo) {
      return Optional.empty();
    }
  }

  private static List<InCondition> projects(List<Condition> conditions, Project project) {
    List<InCondition> projects = new ArrayList<>();
    FaultList faults = new FaultList(project.places().whole().source());
    for (Condition condition : conditions) {
      if (faults.size() >= MOST_FAULTS) {
        faults.add(
            project.places().whole(),
            "the conditions from "
                + PlainText.quoted(condition.name())
                + " on are not checked yet");
        break;
      }
      try {
        projects.add(
            condition.changes().isEmpty()
                ? new InCondition(condition, project)
                : new InCondition(condition, project.withTree(condition.of(project.tree()))));
      } catch (InvalidInput wrong) {
        condition.tell(wrong).faults().forEach(faults::add);
      }
    }
    faults.throwIfAny();
    return projects;
  }

  private static void requireKnown(List<String> wanted, List<Condition> all, Project project) {
    List<String> names = all.stream().map(Condition::name).toList();
    for (String name : wanted) {
      if (!names.contains(name)) {
        throw new InvalidInput(
            project.places().whole(),
            "there is no condition " + PlainText.quoted(name) + Choices.hint(name, names));
      }
    }
  }
}
