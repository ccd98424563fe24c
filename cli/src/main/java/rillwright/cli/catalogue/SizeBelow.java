package rillwright.cli.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Run;

/**
 * A run of pipe one catalogue size smaller, of the same material and system, inches or millimetres.
 * A run given by its inside diameter is taken for the pipe in the catalogue that is nearest, if any
 * is near.
 */
public record SizeBelow(List<PipeSize> pipes) implements Function<Run, Optional<Run>> {
  /** A pipe whose inside differs by no more than this share may be the one that was meant. */
  private static final double NEAR = 0.05;

  public SizeBelow {
    pipes = List.copyOf(pipes);
  }

  @Override
  public Optional<Run> apply(Run run) {
    return drawn(run)
        .flatMap(this::below)
        .map(pipe -> new Run(run.lengthM(), new Bore(pipe.insideM()), run.friction(), label(pipe)));
  }

  private static String label(PipeSize pipe) {
    return pipe.size() + " " + pipe.material();
  }

  private Optional<PipeSize> drawn(Run run) {
    PipeSize nearest = null;
    double least = NEAR * run.inside().diameterM();
    for (PipeSize pipe : pipes) {
      if (label(pipe).equals(run.label())) {
        return Optional.of(pipe);
      }
      double difference = Math.abs(pipe.insideM() - run.inside().diameterM());
      if (difference < least) {
        least = difference;
        nearest = pipe;
      }
    }
    return Optional.ofNullable(nearest);
  }

  private Optional<PipeSize> below(PipeSize drawn) {
    PipeSize largest = null;
    for (PipeSize pipe : pipes) {
      boolean smaller =
          pipe.material().equals(drawn.material())
              && pipe.isMetric() == drawn.isMetric()
              && pipe.insideM() < drawn.insideM();
      if (smaller && (largest == null || pipe.insideM() > largest.insideM())) {
        largest = pipe;
      }
    }
    return Optional.ofNullable(largest);
  }
}
