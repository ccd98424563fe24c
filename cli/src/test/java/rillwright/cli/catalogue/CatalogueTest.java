package rillwright.cli.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.friction.ColebrookWhite;

class CatalogueTest {
  private final Catalogue catalogue = Catalogue.standard();

  static Stream<String> sources() {
    Catalogue catalogue = Catalogue.standard();
    return Stream.of(
            catalogue.listMaterials().stream().map(Material::source),
            catalogue.listPipes().stream().map(PipeSize::source),
            catalogue.listFittings().stream().map(FittingLoss::source),
            catalogue.listCheckValves().stream().map(CheckValveRow::source),
            catalogue.listValveOpenings().stream().map(ValveOpening::source),
            catalogue.listLips().stream().map(Lip::source),
            catalogue.listBeds().stream().map(Bed::source),
            catalogue.listEnds().stream().map(PipeEnd::source),
            catalogue.listDevices().stream().map(Device::source),
            catalogue.listSkimmers().stream().map(SkimmerMouth::source))
        .flatMap(each -> each)
        .distinct();
  }

  @ParameterizedTest
  @MethodSource("sources")
  void everyRowSaysWhereItIsFrom(String source) {
    boolean unsourced = source.contains("common practice, no source");
    boolean named = source.matches("(?s).*([12]\\d{3}|[A-Z]\\w+ \\w+|textbook|handbook|text).*");
    assertTrue(unsourced || named, source);
    assertFalse(source.contains("memory"), source);
  }

  static Stream<String> materials() {
    return Catalogue.standard().materials().stream();
  }

  @ParameterizedTest
  @MethodSource("materials")
  void everyMaterialHasSizesThatGrow(String material) {
    List<String> sizes = catalogue.sizesOf(material);
    assertFalse(sizes.isEmpty(), material);
    assertEquals(sizes.size(), new HashSet<>(sizes).size(), "a size twice");
    for (String unit : List.of(" in", " mm")) {
      double before = 0;
      double sizeBefore = 0;
      for (String size : sizes.stream().filter(each -> each.endsWith(unit)).toList()) {
        double inside = catalogue.findPipe(material, size).orElseThrow().insideM();
        double nominal = Spelling.lengthM(size).orElseThrow();
        assertTrue(inside > before, material + " " + size);
        assertTrue(nominal > sizeBefore, material + " " + size);
        before = inside;
        sizeBefore = nominal;
      }
    }
  }

  @ParameterizedTest
  @MethodSource("materials")
  void everyRoughnessLiesInItsRangeAndFarBelowTheBore(String name) {
    Material material =
        catalogue.listMaterials().stream().filter(m -> m.name().equals(name)).findFirst().get();
    assertTrue(material.leastRoughnessM() <= material.roughnessM());
    assertTrue(material.roughnessM() <= material.greatestRoughnessM());
    for (String size : catalogue.sizesOf(name)) {
      PipeSize pipe = catalogue.findPipe(name, size).orElseThrow();
      assertEquals(material.roughnessM(), pipe.roughnessM());
      assertTrue(pipe.roughnessM() < 0.05 * pipe.insideM(), name + " " + size);
    }
  }

  @Test
  void everyLossLiesInItsRange() {
    for (FittingLoss fitting : catalogue.listFittings()) {
      assertTrue(
          fitting.least() > 0 && fitting.least() <= fitting.lossCoefficient(), fitting.type());
      assertTrue(fitting.lossCoefficient() <= fitting.greatest(), fitting.type());
    }
    for (CheckValveRow valve : catalogue.listCheckValves()) {
      assertTrue(valve.least() > 0 && valve.least() <= valve.lossCoefficient(), valve.type());
      assertTrue(valve.lossCoefficient() <= valve.greatest(), valve.type());
      assertTrue(valve.leastCrackingHeadM() <= valve.crackingHeadM(), valve.type());
      assertTrue(valve.crackingHeadM() <= valve.greatestCrackingHeadM(), valve.type());
    }
    for (Bed bed : catalogue.listBeds()) {
      assertTrue(bed.least() < bed.normal() && bed.normal() < bed.greatest(), bed.name());
    }
    for (Device device : catalogue.listDevices()) {
      Device.Head clean = device.clean();
      Device.Head dirty = device.dirty();
      assertTrue(0 < clean.leastM() && clean.leastM() < clean.usualM(), device.name());
      assertTrue(clean.usualM() < clean.greatestM(), device.name());
      assertTrue(clean.leastM() < dirty.leastM() && clean.usualM() < dirty.usualM());
      assertTrue(dirty.leastM() < dirty.usualM(), device.name());
      assertTrue(dirty.usualM() < dirty.greatestM(), device.name());
      assertTrue(clean.greatestM() < dirty.greatestM(), device.name());
      assertTrue(1 <= device.exponent() && device.exponent() <= 2, device.name());
      assertTrue(device.source().contains("common practice"), device.name());
    }
    for (PipeEnd end : catalogue.listEnds()) {
      assertTrue(end.least() <= end.lossCoefficient(), end.name());
      assertTrue(end.lossCoefficient() <= end.greatest(), end.name());
    }
  }

  @Test
  void lossesBySizeNeverGrowWithTheSize() {
    for (String type : catalogue.fittingTypes()) {
      List<FittingLoss> rows =
          catalogue.listFittings().stream().filter(row -> row.type().equals(type)).toList();
      for (int i = 1; i < rows.size(); i++) {
        assertTrue(rows.get(i).bore().get().diameterM() > rows.get(i - 1).bore().get().diameterM());
        assertTrue(rows.get(i).lossCoefficient() <= rows.get(i - 1).lossCoefficient(), type);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1-1/2 in", "1 1/2 in", "1.5 in", "1-1/2in", "3/2 in", " 1.50 in "})
  void sizeIsFoundInEverySpelling(String spelling) {
    PipeSize pipe = catalogue.findPipe("flexible PVC", spelling).orElseThrow();
    assertEquals("1-1/2 in", pipe.size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"50 in", "50.8 mm", "two in", "2", "2 gph", "-2 in", "", "1--1/2 in"})
  void whatIsNoSizeOfTheMaterialIsNotFound(String size) {
    assertEquals(Optional.empty(), catalogue.findPipe("PVC-U PN 10", size));
  }

  @Test
  void metricSizesAreNotTakenForTheInchesNextToThem() {
    assertEquals("50 mm", catalogue.findPipe("flexible PVC", "50 mm").orElseThrow().size());
    assertEquals("2 in", catalogue.findPipe("flexible PVC", "2 in").orElseThrow().size());
    assertEquals(Optional.empty(), catalogue.findPipe("flexible PVC", "51 mm"));
  }

  @ParameterizedTest
  @CsvSource({"Flexible pvc, flexible PVC", "pvc  SCHEDULE 40, PVC schedule 40"})
  void materialIsFoundWhateverItsCaseAndSpaces(String written, String name) {
    assertEquals(name, catalogue.findPipe(written, "2 in").orElseThrow().material());
    assertEquals(catalogue.sizesOf(name), catalogue.sizesOf(written));
  }

  @Test
  void unknownNamesAreNotFound() {
    Bore bore = new Bore(0.052);
    assertEquals(Optional.empty(), catalogue.findPipe("brass", "2 in"));
    assertEquals(List.of(), catalogue.sizesOf("brass"));
    assertEquals(Optional.empty(), catalogue.findFitting("elbow 91", bore));
    assertEquals(Optional.empty(), catalogue.findCheckValve("swinging", bore));
    assertEquals(Optional.empty(), catalogue.findValve("globe", new Bore(0.05)));
    assertEquals(Optional.empty(), catalogue.findLip("glass"));
    assertEquals(Optional.empty(), catalogue.findBed("felt"));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 1/2 in", "0.9, 3/4 in", "1.9, 2 in", "2.4, 2-1/2 in", "20, 4 in"})
  void fittingBySizeIsThatOfTheNearestBoreByRatio(double inches, String size) {
    Bore bore = new Bore(inches * 0.0254);
    assertEquals(size, catalogue.findFitting("elbow 90 threaded", bore).orElseThrow().size());
  }

  @Test
  void plainCouplingIsTheSameInEverySize() {
    double small =
        catalogue.findFitting("coupling", new Bore(0.015)).orElseThrow().lossCoefficient();
    double large =
        catalogue.findFitting("coupling", new Bore(0.15)).orElseThrow().lossCoefficient();
    assertEquals(0.05, small);
    assertEquals(small, large);
  }

  /** What the table says of corrugated hose: about twice the friction of a smooth bore. */
  @ParameterizedTest
  @CsvSource({"0.5 mm, 1.7, 2.6", "0.2 mm, 1.3, 1.8", "2 mm, 3.0, 4.7"})
  void corrugatedHoseTakesTheStatedMultipleOfSmoothFriction(
      String roughness, double least, double most) {
    double rough = Spelling.lengthM(roughness).orElseThrow();
    for (String size : List.of("25 mm", "32 mm", "40 mm", "50 mm")) {
      double inside = catalogue.findPipe("corrugated hose", size).orElseThrow().insideM();
      double reynolds = 1.2 * inside / 1.0e-6;
      double ratio =
          ColebrookWhite.darcyFrictionFactor(rough / inside, reynolds)
              / ColebrookWhite.darcyFrictionFactor(0, reynolds);
      assertTrue(least < ratio && ratio < most, size + ": " + ratio);
    }
  }
}
