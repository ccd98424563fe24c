package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.FittingLoss;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.field.Uncertain;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.study.uncertainty.Distribution;

/** "catalogue" in place of a K, a roughness or a cracking head. */
class CataloguedRangeTest {
  private static Project project(String pipe, String part) {
    return ProjectText.read(
        ProjectText.POINTS
            + "  line: {from: pond, to: low, pipe: {"
            + pipe
            + "}, parts: [{"
            + part
            + "}, run: 1 m]}\n");
  }

  /** Ends and middle as "catalogue" prints them; the middle is what is taken without the word. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "factor: 0.02 | fitting: {type: sweep 90, k: catalogue} | 0.2 | 0.45 | 0.6",
        "factor: 0.02 | fitting: {type: bulkhead, k: Catalogue, count: 2} | 0.4 | 0.6 | 1",
        "factor: 0.02 | check valve: {type: spring, k: catalogue} | 3 | 5 | 10",
        "factor: 0.02 | check valve: {type: spring, cracking head: catalogue} | 0.2 | 0.4 | 0.7",
        "material: rubber hose, roughness: catalogue | fitting: {k: 1} | 4e-6 | 1e-5 | 1.6e-5"
      })
  void isTheRangeThatTheCatalogueHas(
      String pipe, String part, double least, double middle, double greatest) {
    String bored = pipe.startsWith("material") ? pipe + ", size: 50 mm" : "inside: 50 mm, " + pipe;
    Project ranged = project(bored, part);
    assertEquals(1, ranged.uncertain().size());
    Distribution known = ranged.uncertain().get(0).distribution();
    assertEquals(least, known.quantile(1e-12), 1e-9);
    assertEquals((least + middle) / 2, known.quantile(0.25), 1e-12);
    assertEquals(middle, known.quantile(0.5), 1e-12);
    assertEquals((middle + greatest) / 2, known.quantile(0.75), 1e-12);
    assertEquals(greatest, known.quantile(1 - 1e-12), 1e-9);
    String without = part.replaceAll(",? (k|cracking head): [cC]atalogue", "");
    Project plain = project(bored.replace(", roughness: catalogue", ""), without);
    assertEquals(ProjectText.lineOf(plain), ProjectText.lineOf(ranged));
  }

  @Test
  void aDrawnValueTakesItsPlace() {
    Project project =
        project("inside: 50 mm, factor: 0.02", "fitting: {type: tee run, k: catalogue}");
    List<Uncertain> unknowns = project.uncertain();
    Network drawn = new DrawnNetworks(project, unknowns).with(List.of(0.77));
    Fitting tee = (Fitting) drawn.line(new LineName("line")).parts().get(0);
    assertEquals(0.77, tee.loss().kForward());
    assertEquals("tee run", tee.label());
  }

  /** A row whose ends are one is known exactly. */
  @Test
  void aRowWithoutARangeStandsForItsOneNumber() {
    FittingLoss tee =
        Catalogue.standard().findFitting("tee run threaded", new Bore(0.05)).orElseThrow();
    assertEquals(tee.least(), tee.greatest());
    Project project =
        project("inside: 50 mm, factor: 0.02", "fitting: {type: tee run threaded, k: catalogue}");
    assertEquals(List.of(), project.uncertain());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "inside: 50 mm, factor: 0.02 | fitting: {k: catalogue} | k",
        "inside: 50 mm, factor: 0.02 | fitting: {type: elbow 17, k: catalogue} | k",
        "inside: 50 mm, roughness: catalogue | fitting: {k: 1} | roughness"
      })
  void withoutATypeOrMaterialItStandsForNothing(String pipe, String part, String field) {
    InvalidInput refused = assertThrows(InvalidInput.class, () -> project(pipe, part));
    assertTrue(
        refused
            .getMessage()
            .contains(
                field
                    + ": \"catalogue\" needs a type or material beside it that is in the"
                    + " catalogue"),
        refused.getMessage());
  }

  @Test
  void elsewhereItIsNoQuantity() {
    assertThrows(
        InvalidInput.class,
        () -> project("inside: catalogue, factor: 0.02", "fitting: {type: elbow 90}"));
  }
}
