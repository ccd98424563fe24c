package rillwright.cli.study.duty;

import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Skimmer;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.study.duty.Duty;
import rillwright.solver.study.duty.DutyFinder;

/**
 * The duty of a pump in a project.
 *
 * @param job that it is about
 * @param network of the project
 * @param place where the pump stands
 * @param duty what it must make
 */
public record DutyAnswer(Job job, Network network, PumpPlace place, Duty duty) implements Answer {
  /** Less than that is the same head, m. */
  private static final double UNSEEN_M = 1e-3;

  /** The first skimmer or filter, clogged by less, that makes it greater when a share of it is. */
  public Optional<Placed<? extends Part>> asksMoreClogged(double share) {
    return Stream.<Placed<? extends Part>>concat(
            network.placed(Skimmer.class).stream()
                .filter(it -> it.part().clogged() < share)
                .filter(it -> asksMore(it, it.part().withClogged(share))),
            network.placed(Filter.class).stream()
                .filter(it -> it.part().clogged() < share)
                .filter(it -> asksMore(it, it.part().withClogged(share))))
        .findFirst();
  }

  private boolean asksMore(Placed<?> placed, Part clogged) {
    Network changed = network.withPart(placed.line().name(), placed.index(), clogged);
    return headM(DutyFinder.find(changed, place)) > headM(duty) + UNSEEN_M;
  }

  private static double headM(Duty duty) {
    return duty.throttled().map(Duty.Throttled::headM).orElse(Double.POSITIVE_INFINITY);
  }
}
