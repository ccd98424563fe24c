package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Bore;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Friction;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;

/** What a line costs at its ends, and which bore and friction its parts take. */
class LineMappingTest {
  private static final String PIPE = "pipe: {inside: 50 mm, factor: 0.02}, ";

  private static Line line(String text) {
    return ProjectText.lineOf(ProjectText.withLine(text));
  }

  private static Optional<Bore> bore(double millimetres) {
    return Optional.of(new Bore(millimetres / 1000));
  }

  private static Part part(String text, int index) {
    return line(text).parts().get(index);
  }

  @ParameterizedTest(name = "at a {0}: {1} in, {2} out")
  @CsvSource({"pond, 0.5, 1", "chamber, 0.5, 1", "split, 0, 0", "fall, 0.5, 1", "jet, 0, 1"})
  void anEndCostsWhatIsUsualForItsPoint(String point, double in, double out) {
    Line begins = line("{from: " + point + ", to: low, " + PIPE + "parts: [run: 1 m]}");
    Line ends = line("{from: low, to: " + point + ", " + PIPE + "parts: [run: 1 m]}");
    assertEquals(new LineEnd(new EndLoss(in, out), bore(50)), begins.entrance());
    assertEquals(new LineEnd(new EndLoss(in, out), bore(50)), ends.exit());
  }

  @ParameterizedTest
  @CsvSource({
    "'skimmer: {width: 1 ft, sill: -5 in}, run: 1 m', 0",
    "'pump: {model: to be chosen}, run: 1 m', 0",
    "'gauge: {name: G1, elevation: 0 m}, skimmer: {width: 1 ft, sill: -5 in}, run: 1 m', 0.5",
    "'run: 1 m, pump: to be chosen', 0.5"
  })
  void aSkimmerOrPumpInTheWaterHasNoEntranceBesides(String parts, double k) {
    Line line = line("{from: pond, to: low, " + PIPE + "parts: [" + parts + "]}");
    assertEquals(k, line.entrance().loss().kEntering());
    assertEquals(new EndLoss(0.5, 1), line.exit().loss());
  }

  @Test
  void aLastPumpDoesNotTakeTheExitAway() {
    Line line = line("{from: pond, to: low, " + PIPE + "parts: [run: 1 m, pump: to be chosen]}");
    assertEquals(1, line.exit().loss().kLeaving());
  }

  @Test
  void aGivenEndCountsBothWaysOnItsOwnBoreOrThePipes() {
    Line line =
        line(
            "{from: pond, to: low, entrance: {k: 0.3}, exit: {k: 0.7, inside: 80 mm}, "
                + PIPE
                + "parts: [pump: to be chosen, run: {length: 1 m, inside: 40 mm}]}");
    assertEquals(new LineEnd(new EndLoss(0.3, 0.3), bore(50)), line.entrance());
    assertEquals(new LineEnd(new EndLoss(0.7, 0.7), bore(80)), line.exit());
  }

  @Test
  void withoutAPipeAnEndTakesTheBoreOfTheNearestPart() {
    Line line =
        line(
            "{from: pond, to: low, parts: [fitting: {k: 1, inside: 30 mm}, run: {length: 1 m,"
                + " inside: 40 mm, factor: 0.02}, run: {length: 1 m, inside: 60 mm, factor: 0.02},"
                + " filter: {rating: {flow: 1 m3/h, head: 1 m}}]}");
    assertEquals(bore(30), line.entrance().bore());
    assertEquals(bore(60), line.exit().bore());
  }

  @Test
  void aHighPointHasNoBoreThatAnEndCouldTake() {
    Line line =
        line(
            "{from: pond, to: low, parts: [run: {length: 1 m, inside: 30 mm, factor: 0.02}, valve:"
                + " {k: 0.5, inside: 20 mm}, high point: 1 m]}");
    assertEquals(bore(20), line.exit().bore());
  }

  @Test
  void aLineWithoutAnyBoreHasNoEnds() {
    Line line = line("{from: pond, to: low, parts: [filter: {rating: {flow: 1 m3/h, head: 1 m}}]}");
    assertEquals(Optional.empty(), line.entrance().bore());
    assertEquals(0, line.entrance().lawAtFrom().headLossAt(1));
  }

  @Test
  void noLossAtATeeMayBeSaid() {
    Line line = line("{from: split, to: low, entrance: {k: 0}, " + PIPE + "parts: [run: 1 m]}");
    assertEquals(new EndLoss(0, 0), line.entrance().loss());
  }

  @Test
  void aRunTakesBoreAndFrictionEachOnItsOwn() {
    Line line =
        line(
            "{from: pond, to: low, pipe: {inside: 50 mm, roughness: 0.01 mm}, parts: [run: 1 m,"
                + " run: {length: 1 m, inside: 40 mm}, run: {length: 1 m, factor: 0.03}, run:"
                + " {length: 1 m, inside: 60 mm, hazen c: 150}]}");
    Friction pipe = new Friction.Roughness(1e-5);
    assertEquals(
        List.of(
            new Run(1, new Bore(0.05), pipe, "50 mm bore"),
            new Run(1, new Bore(0.04), pipe, "40 mm bore"),
            new Run(1, new Bore(0.05), new Friction.DarcyFactor(0.03), "50 mm bore"),
            new Run(1, new Bore(0.06), new Friction.HazenC(150), "60 mm bore")),
        line.parts());
  }

  @Test
  void aPipeMaySayOnlyItsWallOrOnlyItsBore() {
    assertEquals(
        new Run(1, new Bore(0.04), new Friction.DarcyFactor(0.02), "40 mm bore"),
        part(
            "{from: pond, to: low, pipe: {factor: 0.02}, parts: [run: {length: 1 m, inside: 40"
                + " mm}]}",
            0));
    assertEquals(
        new Run(1, new Bore(0.04), new Friction.HazenC(140), "40 mm bore"),
        part(
            "{from: pond, to: low, pipe: {inside: 40 mm}, parts: [run: {length: 1 m, hazen c:"
                + " 140}]}",
            0));
  }

  @Test
  void pipesComeFromTheCatalogueByMaterialAndSize() {
    Run run =
        (Run)
            part(
                "{from: pond, to: low, pipe: {material: flexible PVC, size: 2 in}, parts: [run: 38"
                    + " ft]}",
                0);
    assertEquals("2 in flexible PVC", run.label());
    // The catalogue's own row: 2.049 in inside, roughness 0.05 mm.
    assertEquals(2.049 * 0.0254, run.inside().diameterM(), 1e-12);
    assertEquals(new Friction.Roughness(5e-5), run.friction());
  }

  @ParameterizedTest
  @CsvSource({"1-1/2 in", "1 1/2 in", "1.5 in"})
  void aSizeAloneIsOfTheLinesMaterial(String size) {
    Run run =
        (Run)
            part(
                "{from: pond, to: low, pipe: {material: flexible PVC, size: 2 in}, parts: [run:"
                    + " {length: 1 m, size: "
                    + size
                    + "}]}",
                0);
    assertEquals("1-1/2 in flexible PVC", run.label());
  }

  @Test
  void aSayingOfFrictionOverridesTheCatalogues() {
    Run run =
        (Run)
            part(
                "{from: pond, to: low, pipe: {material: flexible PVC, size: 2 in, hazen c: 150},"
                    + " parts: [run: 1 m]}",
                0);
    assertEquals(new Friction.HazenC(150), run.friction());
  }

  @Test
  void otherPartsStandInThePipeOrABoreOfTheirOwn() {
    List<Part> parts =
        line("{from: pond, to: low, "
                + PIPE
                + "parts: [fitting: {k: 1}, valve: {k: 1, inside: 30 mm}, check valve: {k: 1}, run:"
                + " {length: 1 m, inside: 60 mm}, loss: {k: 1}, gauge: {name: G1, elevation: 0 m},"
                + " high point: 2 m]}")
            .parts();
    assertEquals(
        List.of(bore(50), bore(30), bore(50), bore(60), bore(50), bore(50)),
        parts.subList(0, 6).stream().map(Part::bore).toList());
    assertEquals(new HighPoint(2, bore(50)), parts.get(6));
  }

  @Test
  void withoutAPipeTheyStandInTheNearestRunUpstreamFirst() {
    List<Part> parts =
        line("{from: pond, to: low, parts: [fitting: {k: 1}, run: {length: 1 m, inside: 40 mm,"
                + " factor: 0.02}, gauge: {name: G1, elevation: 0 m}, valve: {k: 1}, loss: {k: 1},"
                + " run: {length: 1 m, inside: 60 mm, factor: 0.02}, check valve: {k: 1}]}")
            .parts();
    assertEquals(
        List.of(bore(40), bore(40), bore(40), bore(40), bore(40), bore(60), bore(60)),
        parts.stream().map(Part::bore).toList());
  }

  @Test
  void aSizeOfAPartIsOfTheMaterialAround() {
    Part fitting =
        part(
            "{from: pond, to: low, parts: [run: {length: 1 m, material: flexible PVC, size: 2 in},"
                + " fitting: {type: elbow 90, size: 3 in}]}",
            1);
    assertTrue(fitting.bore().orElseThrow().diameterM() > 0.07, fitting.toString());
  }

  @Test
  void aGaugeInALineWithoutBoreHasNone() {
    assertEquals(
        Optional.empty(),
        part(
                "{from: pond, to: low, parts: [skimmer: {width: 1 ft, sill: -5 in}, gauge: {name:"
                    + " G1, elevation: 0 m}]}",
                1)
            .bore());
  }

  /**
   * What a reducer or enlargement in a line from pond to low takes for water from pond: Borda and
   * Carnot's (1 - (d/D)²)² where it widens, 0.5 (1 - (d/D)²) where it narrows, on the smaller bore.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "run: {length: 1 m, inside: 25 mm}, fitting: {type: enlargement}, run: 1 m | 0.5625",
        "run: {length: 1 m, inside: 25 mm}, fitting: {type: Enlargement, count: 2}, run: 1 m |"
            + " 1.125",
        "run: 1 m, fitting: {type: reducer}, run: {length: 1 m, inside: 25 mm} | 0.375",
        "run: 1 m, fitting: {type: reducer, inside: 40 mm}, run: {length: 1 m, inside: 40 mm} |"
            + " 0.18",
        "run: {length: 1 m, inside: 40 mm}, fitting: {type: reducer, inside: 100 mm}, run: 1 m |"
            + " 0.375",
        "run: 1 m, fitting: {type: reducer, inside: 25 mm} | 0.375",
        "fitting: {type: reducer}, run: {length: 1 m, inside: 25 mm} | 0.375",
        "run: 1 m, fitting: {type: reducer, k: 0.2}, run: {length: 1 m, inside: 25 mm} | 0.2"
      })
  void aReducerTakesWhatTheBoresOnBothSidesGive(String parts, double k) {
    Line line = ProjectText.lineOf(project(parts));
    Fitting fitting = line.placed(Fitting.class).get(0).part();
    assertEquals(k, fitting.count() * fitting.loss().kForward(), 1e-12);
    assertTrue(fitting.bore().orElseThrow().diameterM() <= 0.05);
    assertEquals(List.of(), line.changesOfBore(), "and no other change is counted");
  }

  private static Project project(String parts) {
    return ProjectText.withLine("{from: pond, to: low, " + PIPE + "parts: [" + parts + "]}");
  }

  @Test
  void aReducerBetweenEqualBoresIsNoted() {
    assertEquals(
        List.of(
            "line \"line\": fitting: the bore is the same on both sides, so it takes no head; give"
                + " its own bore with \"inside\" or \"size\", or its k"),
        project("run: 1 m, fitting: {type: reducer}, run: 1 m").notes().stream()
            .filter(note -> note.contains("bore"))
            .toList());
  }

  @Test
  void aReducerWithoutASecondBoreIsAFault() {
    assertTrue(
        ProjectText.faultsOf(
                ProjectText.POINTS
                    + "  line: {from: pond, to: low, parts: [fitting: {type: reducer}]}\n")
            .contains("its two bores are not known"));
  }
}
