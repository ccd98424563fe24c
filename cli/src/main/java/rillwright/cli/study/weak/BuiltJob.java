package rillwright.cli.study.weak;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.catalogue.SizeBelow;
import rillwright.cli.file.Project;
import rillwright.solver.network.Run;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.JobFacts;

/** The job that a project describes, as it was built. */
public final class BuiltJob {
  private BuiltJob() {}

  /**
   * The job with what the project and the catalogue say of it.
   *
   * @throws rillwright.solver.steady.NoBalance if it has no steady state
   */
  public static AsBuilt of(Project project) {
    List<PipeSize> pipes = Catalogue.standard().listPipes();
    Set<String> soft =
        pipes.stream()
            .filter(pipe -> pipe.wall().coiled())
            .map(PipeSize::label)
            .collect(Collectors.toSet());
    Map<String, JobFacts.Sheet> sheets = new LinkedHashMap<>();
    project
        .sheets()
        .forEach(
            (model, sheet) -> {
              if (!sheet.facts().isInvented()) {
                sheets.put(
                    model,
                    new JobFacts.Sheet(
                        sheet.curve(),
                        sheet.facts().nameplate().voltageV(),
                        sheet.facts().nameplate().phases() == 3));
              }
            });
    return AsBuilt.of(
        project.network(),
        new JobFacts(new SizeBelow(pipes), run -> isSoft(run, soft), sheets, evaporation(project)));
  }

  private static boolean isSoft(Run run, Set<String> soft) {
    return soft.contains(run.label());
  }

  private static OptionalDouble evaporation(Project project) {
    return project.streams().loss().stream()
        .mapToDouble(loss -> loss.evaporationMPerS())
        .findFirst();
  }
}
