package rillwright.cli.study.asbuilt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.visit.VisitReader;
import rillwright.cli.report.json.AsbuiltJson;
import rillwright.cli.report.page.terminal.Screen;
import rillwright.cli.report.page.terminal.TerminalPage;
import rillwright.cli.report.text.asbuilt.AsbuiltText;
import rillwright.cli.schema.ResultSchema;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Quantity;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/**
 * What looks say of what was not known, beside Bayes' rule summed by hand over the one quantity
 * that each look is about. The job is invented.
 */
class LooksInAsbuiltTest {
  private static final String JOB =
      """
      rillwright: 1
      points:
        pond: {kind: basin, level: 0 m, area: 20 m2}
        chamber: {kind: chamber, floor: -0.8 m, intake: -0.5 m}
        fall: {kind: fall, crest: 1.6 m, width: 0.6 m, lip: stone}
      evaporation: 5 mm/day
      lines:
        intake:
          from: pond
          to: chamber
          parts:
            - skimmer: {width: 0.4 m, sill: -90 mm}
            - filter: {rating: {flow: 3 L/s, head: 8 mm, exponent: 2}, clogged: 0 % .. 40 %}
        supply:
          from: chamber
          to: fall
          pipe: {material: PVC schedule 40, size: 2 in}
          parts:
            - pump: P-1
            - valve: {type: ball, open: 40 % .. 100 %}
            - run: 20 m
      pumps:
        P-1:
          voltage: 115 V
          points:
            - {flow: 0 L/s, head: 7.2 m, power: 250 W}
            - {flow: 2.0 L/s, head: 6.2 m, power: 348 W}
            - {flow: 4.0 L/s, head: 3.35 m, power: 405 W}
            - {flow: 5.2 L/s, head: 0 m, power: 410 W}
      """;

  @TempDir private Path folder;
  private Project project;

  @BeforeEach
  void write() throws Exception {
    project = ProjectReader.read(Files.writeString(folder.resolve("job.yaml"), JOB), List.of());
  }

  private AsbuiltAnswer answer(String... readings) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("visit.yaml"), "readings: [" + String.join(", ", readings) + "]");
    return new AsbuiltRequest(Optional.of(VisitReader.inFile(file, project.network())))
        .answer(project, Progress.UNSEEN);
  }

  private static Band of(AsbuiltAnswer answer, String address) {
    return answer.quantities().stream()
        .filter(quantity -> quantity.named().address().equals(address))
        .map(Quantity::posterior)
        .findFirst()
        .orElseThrow();
  }

  /** The band of a quantity that is even over a range, weighed by a likelihood. */
  private static Band summed(double from, double to, DoubleUnaryOperator likelihood) {
    int steps = 100_000;
    double[] passed = new double[steps];
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      sum += likelihood.applyAsDouble(from + (i + 0.5) / steps * (to - from));
      passed[i] = sum;
    }
    double all = sum;
    double[] found =
        Arrays.stream(new double[] {0.05, 0.5, 0.95})
            .map(share -> Math.abs(Arrays.binarySearch(passed, share * all) + 1))
            .map(index -> from + index / steps * (to - from))
            .toArray();
    return new Band(found[0], found[1], found[2]);
  }

  private static void assertNear(Band expected, Band found, double within) {
    assertEquals(expected.p5(), found.p5(), within, "5 %");
    assertEquals(expected.p50(), found.p50(), within, "50 %");
    assertEquals(expected.p95(), found.p95(), within, "95 %");
  }

  /** A handle at 40 degrees of 90, within 5: 50 of 90 are open. */
  @Test
  void aHandleTellsHowFarItsValveIsOpen() throws Exception {
    Band found = of(answer("{look: handle, at: supply, seen: 40 deg}"), "lines.supply.valve.open");
    // 40 degrees with the valve's middle of 27 as built: 1 % of that for the model
    double deviation = Math.hypot(2.5, 0.27) / 90;
    Band expected =
        summed(0.4, 1, open -> Math.exp(-Math.pow((open - 50.0 / 90) / deviation, 2) / 2));
    assertNear(expected, found, 0.004);
  }

  /** A dirty net is seen in 95 of 100 from 15 % on, in 3 of 100 where it is clean. */
  @Test
  void aNetTellsWhetherItIsClogged() throws Exception {
    DoubleUnaryOperator seen = clogged -> 0.03 + 0.92 * Math.min(1, clogged / 0.15);
    String address = "lines.intake.filter.clogged";
    Band dirty = of(answer("{look: net, at: intake, seen: dirty}"), address);
    assertNear(summed(0, 0.4, seen), dirty, 0.012);
    Band clean = of(answer("{look: net, at: intake, seen: clean}"), address);
    assertNear(summed(0, 0.4, clogged -> 1 - seen.applyAsDouble(clogged)), clean, 0.02);
  }

  /** What only finds faults is left out with a line that says why, in the text and in the JSON. */
  @Test
  void whatOnlyFindsFaultsIsLeftOutAndSaid() throws Exception {
    AsbuiltAnswer answer =
        answer(
            "{look: rocks, at: fall, seen: wet}",
            "{at: fall, flow: 3 L/s}",
            "{pump: supply, volts: 103 V}",
            "{look: mouth, at: intake, seen: 30 mm}",
            "{at: pond, falls: 3 mm/h}");
    assertEquals(3, answer.leftOut().size());
    assertEquals(2, answer.readings().size());
    String text = TerminalPage.of(AsbuiltText.of(answer), Screen.PAPER).replaceAll("\\s+", " ");
    assertTrue(
        text.contains("Left out: look: rocks behind \"fall\": water behind the rocks is a fault."),
        text);
    assertTrue(text.contains("Left out: volts at the pump in \"supply\": it tells of"), text);
    String json = AsbuiltJson.of(answer);
    ResultSchema.assertTakes(json);
    assertTrue(json.contains("\"reason\": \"more than evaporates is a leak"), json);
  }

  /** A net that the file calls clean and that looks dirty is marked, and no more than that. */
  @Test
  void aLookThatDisagreesIsMarked() throws Exception {
    project = project.with(List.of("lines.intake.filter.clogged=0 %"));
    AsbuiltAnswer answer = answer("{look: net, at: intake, seen: dirty}");
    assertTrue(answer.readings().get(0).isOff(), answer.readings().toString());
    assertTrue(answer.fits(), "one look in thirty is wrong");
    assertEquals(1, answer.chance(), "a look is no sum of squares");
    assertTrue(answer.chiSquare() < 0.5, "that of the valve alone: " + answer.chiSquare());
  }

  /** Looks at what is not known are proposed. */
  @Test
  void theNextMayBeALook() throws Exception {
    AsbuiltAnswer answer = answer("{look: net, at: intake, seen: clean}");
    String text = TerminalPage.of(AsbuiltText.of(answer), Screen.PAPER);
    assertTrue(text.contains("Handle of the valve in \"supply\""), text);
  }
}
