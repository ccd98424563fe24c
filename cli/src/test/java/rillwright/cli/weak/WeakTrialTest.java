package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Run;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.weak.BuiltJob;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.inference.Diagnostician;
import rillwright.solver.study.diagnosis.inference.Diagnostician.Sizes;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.trial.CallScore;
import rillwright.solver.study.diagnosis.trial.Trial;
import rillwright.solver.study.diagnosis.trial.TrialFigures;
import rillwright.solver.study.diagnosis.trial.TrialJob;

/**
 * The inference on a hundred and twenty simulated calls; {@code DEVELOPERS.md} has the long table.
 * The bounds are those that the long one must keep, but for what fewer calls leave to chance: of
 * 120 calls a share is off by 0.04 and a mean gain by 0.1 (one standard deviation).
 */
class WeakTrialTest {
  private static final long SEED = 20;
  private static final int CALLS = 120;

  private static TrialJob job(Path file) {
    AsBuilt built = BuiltJob.of(ProjectReader.read(file, List.of()));
    CauseTable causes = CauseTable.of(built);
    return new TrialJob(
        file.toString(), causes, Diagnostician.of(built, causes, List.of(), Sizes.CALLED_FOR));
  }

  private static List<TrialJob> jobs() {
    return Stream.of(
            Path.of("src/test/resources/rillwright/cli/weak/service-call.yaml"),
            Path.of("../examples/weak-fall/fall.yaml"),
            Path.of("../examples/twin-falls/falls.yaml"))
        .map(WeakTrialTest::job)
        .toList();
  }

  /** One pipe and nothing else: no two faults of it are apart. */
  @Test
  void whereNoTwoFaultsAreApartThereIsNoPairToSimulate(@TempDir Path folder) throws IOException {
    StringBuilder job =
        new StringBuilder(
            """
            points:
              pond: {kind: basin, level: 0 m}
              fall: {kind: outlet, elevation: -1 m}
            lines:
              down:
                from: pond
                to: fall
                pipe: {inside: 50 mm, roughness: 0.01 mm}
                parts:
                  - run: 5 m
            """);
    for (int i = 0; i < 6; i++) {
      job.append("      - gauge: {name: G" + i + ", elevation: -1 m}\n      - run: 1 m\n");
    }
    String file = Files.writeString(folder.resolve("one.yaml"), job).toString();
    assertEquals(0, Run.of("weak-trial", file, "--calls", "2").status());
    Run pairs = Run.of("weak-trial", file, "--calls", "2", "--pairs", "1");
    assertEquals(2, pairs.status());
    assertTrue(pairs.err().contains("so there is no call to simulate: add gauges"), pairs.err());
  }

  @Test
  void keepsTheFiguresOfSoundInference() {
    List<TrialJob> jobs = jobs();
    List<CallScore> scores = Trial.run(jobs, CALLS, SEED);
    TrialFigures figures = TrialFigures.of(scores);
    String shown = "seed " + SEED + ": " + figures;

    assertEquals(CALLS, figures.calls());
    assertTrue(figures.groupHolds() >= 0.81, shown);
    assertTrue(figures.groupSize() <= 4.4, shown);
    assertTrue(figures.gainNats() >= 1.35, shown);
    assertTrue(figures.truthAfterAdvice() - figures.truthAfterRandom() >= 0.06, shown);
    assertTrue(figures.truthAfterTwoAdvised() - figures.truthAfterTwoRandom() >= 0.15, shown);
    assertTrue(Math.abs(figures.surplusBits()) <= 0.15 + 0.1, shown);
    for (TrialFigures.Bin bin : figures.calibration()) {
      assertTrue(bin.entries() < 15 || bin.deviations() <= 3, shown);
    }
    assertEquals(scores.subList(0, 6), Trial.run(jobs, 6, SEED), "the same seed, the same calls");
  }

  /** A list that is always the same, everything sharpened or everything hedged must fail. */
  @Test
  void shortcutsFailTheFigures() {
    List<CallScore> scores = Trial.run(jobs().subList(0, 2), 60, SEED);
    assertTrue(fails(TrialFigures.of(scores.stream().map(this::sharpened).toList())), "sharpened");
    assertTrue(fails(TrialFigures.of(scores.stream().map(this::hedged).toList())), "hedged");
    assertFalse(fails(TrialFigures.of(scores)), "as they are");
  }

  private static boolean fails(TrialFigures figures) {
    return figures.gainNats() < 1.35
        || figures.calibration().stream()
            .anyMatch(bin -> bin.entries() >= 15 && bin.deviations() > 3);
  }

  private CallScore sharpened(CallScore score) {
    return changed(score, 3);
  }

  private CallScore hedged(CallScore score) {
    return changed(score, 0.15);
  }

  /** Probabilities to a power, normalised. */
  private static CallScore changed(CallScore score, double power) {
    double sum = score.entries().stream().mapToDouble(e -> Math.pow(e.probability(), power)).sum();
    List<CallScore.Entry> entries =
        score.entries().stream()
            .map(e -> new CallScore.Entry(Math.pow(e.probability(), power) / sum, e.hit()))
            .toList();
    return new CallScore(
        score.cause(),
        score.groupHolds(),
        score.groupSize(),
        score.prior(),
        Math.pow(score.truth(), power) / sum,
        score.afterAdvice(),
        score.afterRandom(),
        score.afterTwoAdvised(),
        score.afterTwoRandom(),
        score.promisedBits(),
        score.realisedBits(),
        entries);
  }
}
