package rillwright.cli.need;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.report.units.Shown;
import rillwright.solver.finding.Findings;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Reading;

/**
 * Whether one can ask of a job why it is weak.
 *
 * @param project as it is written
 * @param built the job that it describes
 * @param slight how faults that nobody would call about are searched for too, for people
 */
public record WeakJob(Project project, AsBuilt built, String slight) {
  /** Findings that say why nothing flows, the plainest first. */
  private static final List<String> REASONS =
      List.of(
          "valve-shut",
          "clogged-shut",
          "pump-stopped",
          "starved-chamber",
          "cannot-start",
          "pump-held-shut",
          "pump-runs-dry",
          "check-valve-shut");

  /**
   * Refuses a job in which nothing flows as the file stands: all that was read is compared with it.
   */
  public void requireFlow() {
    if (built.isDry()) {
      throw new InvalidInput(
          project.places().whole(),
          "nothing flows in the job as the file describes it, so there is nothing to compare the"
              + " readings with."
              + reason()
              + " Describe the job as it was built and ran; what was found on the day belongs under"
              + " \"readings\" and \"signs\"");
    }
  }

  private String reason() {
    return Findings.of(built.state()).stream()
        .filter(finding -> REASONS.contains(finding.code()))
        .min(Comparator.comparingInt(finding -> REASONS.indexOf(finding.code())))
        .map(finding -> " " + finding.message(Shown.of(project.show())))
        .orElse("");
  }

  /** Refuses a job at which nobody could see that it is weak. */
  public void requireCall(Visit visit) {
    List<Measurand> read = visit.readings().stream().map(Reading::what).toList();
    if (!Scope.of(built, read).canBeWeak()) {
      throw new InvalidInput(
          project.places().whole(),
          "this job has neither a fall nor an outlet in air, so a weak flow cannot be seen; to"
              + " search for faults all the same, "
              + slight);
    }
  }

  /** What is wrong with a job, or with priors for it, where no cause explains anything. */
  public InvalidInput unexplained(Optional<Path> priors) {
    return new InvalidInput(
        priors.map(file -> Place.whole(file.toString())).orElse(project.places().whole()),
        "no cause with a prior above 0 takes a tenth off a fall of this job; give another cause a"
            + " prior, or include slight faults: "
            + slight);
  }
}
