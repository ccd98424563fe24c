package rillwright.cli.study.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.condition.InCondition;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.study.Job;
import rillwright.cli.study.Request;
import rillwright.solver.progress.Progress;
import rillwright.solver.steady.NoBalance;

/**
 * Another request, asked in each of several conditions of the site: those that the file names, else
 * those that are offered.
 *
 * @param request what is asked
 * @param names of the conditions; none for all
 * @param <A> what is answered in one condition
 */
public record InConditions<A>(Request<A> request, List<String> names) implements Request<Cases<A>> {
  public InConditions {
    names = List.copyOf(names);
  }

  /**
   * {@inheritDoc}
   *
   * @throws InvalidInput if a condition is wrong or not there
   */
  @Override
  public Cases<A> answer(Project project, Progress progress) {
    ProjectConditions conditions = ProjectConditions.of(project, names);
    int count = conditions.projects().size();
    List<Case<A>> cases = new ArrayList<>();
    for (InCondition one : conditions.projects()) {
      int before = cases.size();
      Progress part = (done, all) -> progress.goesOn(before * all + done, count * all);
      cases.add(caseOf(one, part));
    }
    return new Cases<>(Job.of(project), conditions.offered(), cases);
  }

  private Case<A> caseOf(InCondition one, Progress progress) {
    NamedCondition named = NamedCondition.of(one.condition());
    try {
      A answer = request.answer(one.project(), progress);
      return new Case<>(named, Optional.of(answer), Optional.empty());
    } catch (NoBalance none) {
      return new Case<>(named, Optional.empty(), Optional.of(none.reason()));
    } catch (InvalidInput wrong) {
      throw one.condition().tell(wrong);
    }
  }
}
