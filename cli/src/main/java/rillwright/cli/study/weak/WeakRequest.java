package rillwright.cli.study.weak;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rillwright.cli.file.Project;
import rillwright.cli.file.visit.PriorsReader.Priors;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.study.Job;
import rillwright.cli.study.PumpsChosen;
import rillwright.cli.study.Request;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.inference.Diagnosis;
import rillwright.solver.study.diagnosis.inference.Diagnostician;
import rillwright.solver.study.diagnosis.inference.Diagnostician.Sizes;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Reading;

/**
 * What explains the readings at a weak fall, and what is to be read next?
 *
 * @param visit what was read and seen; empty for what the project says of it
 * @param causes with their priors
 * @param sizes of causes that count
 */
public record WeakRequest(Optional<Visit> visit, CausesRequest causes, Sizes sizes)
    implements Request<WeakAnswer> {
  /** By the readings of the project and the usual causes, when somebody has called. */
  public static WeakRequest usual() {
    return new WeakRequest(Optional.empty(), new CausesRequest(Optional.empty()), Sizes.CALLED_FOR);
  }

  /**
   * {@inheritDoc}
   *
   * @throws NothingExplains if no cause that counts can explain anything
   */
  @Override
  public WeakAnswer answer(Project project, Progress progress) {
    PumpsChosen.require(project.network());
    AsBuilt built = BuiltJob.of(project);
    Priors priors = causes.priorsOf(built);
    Visit shown = visit.orElseGet(() -> VisitReader.inProject(project));
    ToDoubleFunction<Cause> signs =
        cause -> priors.signs().factor(shown.signs(), cause.id().cause());
    Diagnostician diagnostician =
        Diagnostician.of(
            built,
            priors.causes(),
            shown.readings().stream().map(Reading::what).toList(),
            sizes,
            progress);
    Optional<Diagnosis> called =
        Optional.of(diagnostician)
            .filter(Diagnostician::canExplain)
            .map(it -> it.explain(shown.readings(), signs));
    Optional<Diagnosis> slight =
        called.map(Diagnosis::isExplained).orElse(true)
            ? Optional.empty()
            : Optional.of(diagnostician.withSlight())
                .filter(Diagnostician::canExplain)
                .map(it -> it.explain(shown.readings(), signs))
                .filter(Diagnosis::isExplained);
    boolean slightOnly = slight.isPresent() && sizes == Sizes.CALLED_FOR;
    return new WeakAnswer(
        Job.of(project),
        diagnostician.scope(),
        shown,
        slight.or(() -> called).orElseThrow(NothingExplains::new),
        slightOnly);
  }
}
