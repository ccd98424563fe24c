package rillwright.cli.command.weak;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.Asking;
import rillwright.cli.command.argument.Destination;
import rillwright.cli.command.argument.Format;
import rillwright.cli.command.argument.ProgressBar;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.output.InputFiles;
import rillwright.cli.report.text.weak.TrialText;
import rillwright.cli.study.weak.BuiltJob;
import rillwright.cli.study.weak.CausesRequest;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.inference.Diagnostician;
import rillwright.solver.study.diagnosis.inference.Diagnostician.Sizes;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.trial.NoCall;
import rillwright.solver.study.diagnosis.trial.PairFigures;
import rillwright.solver.study.diagnosis.trial.Trial;
import rillwright.solver.study.diagnosis.trial.TrialFigures;
import rillwright.solver.study.diagnosis.trial.TrialJob;

/** How good the answers of {@code weak} are, on simulated calls. */
@Command(
    name = "weak-trial",
    hidden = true,
    description = {
      "Tests \"weak\" on simulated service calls and reports how well it does.",
      "For each call it draws a fault and what would be read, with its errors. It reports how",
      "often the answer was right, how well its probabilities hold, and what following its",
      "advice was worth."
    },
    footerHeading = "%nExample:%n",
    footer = {"  rillwright weak-trial pond.yaml stream.yaml --calls 600 --seed 1"})
public final class WeakTrialCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", arity = "1..*", description = "Project files.")
  private List<Path> files = List.of();

  @Option(
      names = "--calls",
      paramLabel = "N",
      description = "Simulates this many calls; default 600.")
  private int calls = 600;

  @Option(
      names = "--pairs",
      paramLabel = "N",
      description = "Simulates this many calls with two faults at once, too; default 0.")
  private int pairs = 0;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Draws from this whole number; default 1.")
  private long seed = 1;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.OfPages.class,
      description = "Output format: text (default) or html.")
  private Format format = Format.TEXT;

  @Mixin private Destination destination;

  @Override
  public Integer call() {
    if (calls < 1) {
      throw new ParameterException(
          spec.commandLine(), "--calls: " + calls + " is too few; write 1 or more");
    }
    List<Project> projects =
        files.stream().map(file -> ProjectReader.read(file, List.of())).toList();
    for (int i = 0; i < files.size(); i++) {
      destination.check(InputFiles.of(files.get(i), projects.get(i)));
    }
    List<TrialJob> jobs =
        watched(progress -> projects.stream().map(project -> job(project, progress)).toList());
    for (int i = 0; i < jobs.size(); i++) {
      if (!jobs.get(i).isReadable()) {
        throw new ParameterException(
            spec.commandLine(),
            files.get(i)
                + ": too little can be read in this project; a simulated call takes "
                + Trial.READINGS
                + " readings and one more, one of them at a fall that runs: add gauges, or a pump"
                + " with its power");
      }
    }
    TrialFigures figures = watched(unseen -> TrialFigures.of(Trial.run(jobs, calls, seed)));
    Optional<PairFigures> two =
        pairs > 0
            ? Optional.of(watched(unseen -> Trial.runPairs(jobs, pairs, seed)))
            : Optional.empty();
    destination.print(TrialText.of(figures, two, seed), format);
    return ExitStatus.DONE;
  }

  private <T> T watched(Function<Progress, T> work) {
    try {
      return ProgressBar.watched(spec.commandLine().getErr(), work);
    } catch (NoCall none) {
      throw new ParameterException(
          spec.commandLine(),
          "no faults that were drawn in the time for a call make a fall weak and leave enough to be"
              + " read, so there is no call to simulate: add gauges, or a pump with its power");
    }
  }

  private static TrialJob job(Project project, Progress progress) {
    AsBuilt built = Asking.ask((it, unseen) -> BuiltJob.of(it), project, progress);
    CauseTable causes = CausesRequest.usual(built);
    return new TrialJob(
        project.title(),
        causes,
        Diagnostician.of(built, causes, List.of(), Sizes.CALLED_FOR, progress));
  }
}
