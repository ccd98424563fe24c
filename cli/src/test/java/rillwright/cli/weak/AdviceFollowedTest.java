package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.visit.Visit;
import rillwright.cli.report.page.terminal.Screen;
import rillwright.cli.report.page.terminal.TerminalPage;
import rillwright.cli.report.text.weak.WeakText;
import rillwright.cli.study.Job;
import rillwright.cli.study.weak.BuiltJob;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.inference.Diagnosis;
import rillwright.solver.study.diagnosis.inference.Diagnostician;
import rillwright.solver.study.diagnosis.inference.Diagnostician.Sizes;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Observed;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * Calls as a technician meets them, invented: after a bucket and a gauge whatever is advised first
 * is read or looked at, twice, and the remedy at the top is the right one. What is read is the job
 * solved with what is really wrong written into its file: exactly, and with errors drawn by {@code
 * -Drillwright.seeds}.
 */
class AdviceFollowedTest {
  private static final int SEEDS = Integer.getInteger("rillwright.seeds", 1);
  private static final When RUNNING = new When.Running();
  private static final PointName FALL = new PointName("fall");
  private static final String SUPPLY = "supply";

  /**
   * A call.
   *
   * @param changes what is really wrong, in the file
   * @param besides what of it is no part of the network
   * @param cause whose remedy is right
   */
  private record Call(
      String name, List<String> changes, Consumer<Alteration> besides, String cause) {
    @Override
    public String toString() {
      return name;
    }
  }

  @TempDir private static Path folder;
  private static Project project;
  private static Diagnostician knows;

  @BeforeAll
  static void knowTheJob() throws IOException {
    Path file = folder.resolve("job.yaml");
    Files.writeString(file, TechnicianCallsTest.JOB);
    project = ProjectReader.read(file, List.of());
    AsBuilt built = BuiltJob.of(project);
    knows = Diagnostician.of(built, CauseTable.of(built), List.of(), Sizes.CALLED_FOR);
  }

  static Stream<Call> calls() {
    return Stream.of(
        // 0.94 of the speed: slip 1 - 0.94 * 0.94 = 0.1164, volts by the root of 0.06 / 0.1164
        new Call(
            "a long cord",
            List.of("lines.supply.pump.speed=94 %"),
            job -> job.supply(new LineName(SUPPLY), Math.sqrt(0.06 / 0.1164)),
            "low voltage"),
        // scale takes eight times the head
        new Call(
            "a scaled lamp",
            List.of("lines.supply.loss.head=1.6 m"),
            job -> job.show(Look.PART, SUPPLY, 0.65),
            "loss clogged"),
        new Call("another pump", List.of("lines.supply.pump=P-2"), job -> {}, "other pump"),
        new Call(
            "under the rocks",
            List.of(),
            job -> {
              job.show(Look.ROCKS, "fall", 0.33);
              job.loseAfter(FALL, 0.33, false);
            },
            "water behind the rocks"),
        new Call(
            "a half-turned valve",
            List.of("lines.supply.valve.open=30 %"),
            job -> {},
            "valve not where the file says"),
        new Call(
            "a dirty net",
            List.of("lines.intake.filter.clogged=93 %"),
            job -> job.show(Look.NET, "intake", 0.93),
            "net clogged"));
  }

  @ParameterizedTest
  @MethodSource("calls")
  void endsAtTheRightStepWithinTwo(Call call) {
    List<String> wrong = new ArrayList<>();
    for (int seed = 0; seed <= SEEDS; seed++) {
      List<Reading> readings = new ArrayList<>();
      Random dice = new Random(seed);
      boolean exact = seed == 0;
      readings.add(read(call, new Measurands.Flow(FALL, RUNNING), exact, dice));
      readings.add(read(call, new Measurands.GaugePressure("G1", RUNNING), exact, dice));
      for (int step = 0; step < 2; step++) {
        NextReading next = knows.explain(readings, cause -> 1).next().get(0);
        readings.add(read(call, next.what(), exact, dice));
      }
      String first = topRemedy(readings);
      if (!first.contains(", " + call.cause() + ":")) {
        wrong.add("seed " + seed + ", read " + readings + ": " + first);
      }
    }
    assertTrue(wrong.isEmpty(), call + ": " + String.join("\n", wrong));
  }

  private static Reading read(Call call, Measurand what, boolean exact, Random dice) {
    Network really = project.with(call.changes()).network();
    Alteration job = new Alteration(really, knows.scope().job().facts());
    call.besides().accept(job);
    double value = what.valueIn(Observed.of(job, what.when()).orElseThrow()).orElseThrow();
    if (what instanceof Sight) {
      return new Reading(what, value > 0.5 ? 1 : 0, what.usualTolerance());
    }
    double error = Math.max(-2, Math.min(2, dice.nextGaussian()));
    double deviation = what.usualTolerance().instrumentDeviationAt(value);
    return new Reading(what, value + (exact ? 0 : error * deviation), what.usualTolerance());
  }

  private static String topRemedy(List<Reading> readings) {
    Diagnosis diagnosis = knows.explain(readings, cause -> 1);
    WeakAnswer answer =
        new WeakAnswer(
            Job.of(project), knows.scope(), new Visit(List.of(), List.of()), diagnosis, false);
    String text = TerminalPage.of(WeakText.of(answer), Screen.PAPER);
    return text.substring(text.indexOf("REMEDIES")).lines().skip(1).findFirst().orElseThrow();
  }
}
