package rillwright.cli.interview;

import java.util.Comparator;
import java.util.stream.Stream;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.fault.InvalidInput;

/** Sizes of pipe that are suggested, of the material and the unit system that were answered. */
final class SuggestedPipe {
  private static final double USUAL_BORE_M = 0.053;

  /** Up to this water runs in pipe after a pump (common practice, no source). */
  private static final double USUAL_SPEED_M_PER_S = 1.5;

  private SuggestedPipe() {}

  /** For the pipe from the pump, by what the falls are to get. */
  static String usual(Answers answers) {
    String usual = sizeNear(USUAL_BORE_M, answers);
    double flow = targetsM3PerS(answers.with("pipe size", usual));
    double bore = Math.sqrt(4 * flow / (Math.PI * USUAL_SPEED_M_PER_S));
    return ofPipe(answers)
        .filter(size -> size.isMetric() == answers.isMetric())
        .filter(size -> size.insideM() >= bore)
        .min(Comparator.comparingDouble(PipeSize::insideM))
        .filter(size -> bore > USUAL_BORE_M)
        .map(PipeSize::size)
        .orElse(usual);
  }

  /** What all falls are to get; 0 where the answers make no project yet. */
  private static double targetsM3PerS(Answers answers) {
    try {
      return Draft.withoutPump(answers).project().network().points().stream()
          .mapToDouble(point -> point.targetM3PerS().orElse(0))
          .sum();
    } catch (InvalidInput wrongSoFar) {
      return 0;
    }
  }

  private static Stream<PipeSize> ofPipe(Answers answers) {
    return Catalogue.standard().listPipes().stream()
        .filter(size -> size.material().equals(answers.to("pipe")));
  }

  /** The size of the pipe's material that is nearest to a bore, of the units' own sizes. */
  private static String sizeNear(double boreM, Answers answers) {
    Comparator<PipeSize> foreign =
        Comparator.comparing(size -> size.isMetric() != answers.isMetric());
    return ofPipe(answers)
        .min(foreign.thenComparingDouble(size -> Math.abs(size.insideM() - boreM)))
        .map(PipeSize::size)
        .orElse("2 in");
  }

  /** A branch of three quarters of the bore of the pipe before it. */
  static String ofBranch(Answers answers) {
    return Catalogue.standard()
        .findPipe(answers.to("pipe"), answers.to("pipe size"))
        .map(size -> sizeNear(0.78 * size.insideM(), answers))
        .orElse("1-1/2 in");
  }
}
