package rillwright.cli.study.mend;

import java.util.List;
import java.util.Optional;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.cli.study.RunningFigures;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.search.Searched;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Room;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/**
 * What would mend a job.
 *
 * @param job that it is about
 * @param state as it stands
 * @param needs what does not do what it should
 * @param rooms how much its ponds may fall while it runs as it stands; none where that was not
 *     asked
 * @param remedies that were tried and help, the best first
 * @param searched for the least set of changes together; empty where one change is enough
 * @param conditions in which falls must get their targets too; empty where none are asked for
 * @param bounds what classes of change cannot exceed
 * @param unbounded falls that lack water and for which no bound can be given
 * @param duty of a pump that would do, where a fall lacks water and a pump drives it
 * @param years over which cost counts
 * @param currency of all prices, where one is known
 * @param tried changes that were
 * @param untried changes that were left out because the job is large
 */
public record MendAnswer(
    Job job,
    SteadyState state,
    List<Need> needs,
    List<Room> rooms,
    List<Remedy> remedies,
    Optional<Searched> searched,
    Optional<JudgingConditions> conditions,
    List<Bound> bounds,
    List<PointName> unbounded,
    Optional<DutyAnswer> duty,
    double years,
    Optional<String> currency,
    int tried,
    int untried)
    implements Answer {
  public MendAnswer {
    needs = List.copyOf(needs);
    rooms = List.copyOf(rooms);
    remedies = List.copyOf(remedies);
    bounds = List.copyOf(bounds);
    unbounded = List.copyOf(unbounded);
  }

  /** Falls and outlets with a target. */
  public List<Point> falls() {
    return state.network().waysOut().stream()
        .filter(point -> point.targetM3PerS().orElse(0) > 0)
        .toList();
  }

  /** What running the pumps takes as it stands. */
  public RunningFigures takes() {
    return RunningFigures.of(state, running());
  }

  /** Those that mend all or a part. */
  public List<Remedy> mending() {
    return remedies.stream().filter(Remedy::mends).toList();
  }

  /** Those that mend all that is in need. */
  public List<Remedy> mendingAll() {
    return remedies.stream().filter(remedy -> remedy.mendsAllOf(needs)).toList();
  }

  /** Those that mend a part and leave the rest, or make it worse. */
  public List<Remedy> mendingSome() {
    return mending().stream().filter(remedy -> !remedy.mendsAllOf(needs)).toList();
  }
}
