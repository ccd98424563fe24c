package rillwright.cli.catalogue;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the trade buys from is there, each row with its source. */
class TradeCatalogueTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PVC SDR 21 | 2 in, 4 in",
        "PVC SDR 26 | 2 in, 4 in",
        "PVC SDR 35 | 4 in, 6 in",
        "PVC drain and waste | 1-1/2 in, 2 in, 3 in, 4 in",
        "corrugated drain | 4 in",
        "flexible PVC | 4 in, 6 in",
        "PVC schedule 40 | 6 in, 8 in",
        "PVC-U PN 16 | 20 mm, 25 mm, 125 mm, 140 mm, 200 mm",
        "PVC-U PN 10 | 125 mm, 140 mm, 200 mm",
        "soil pipe | 50 mm, 82 mm, 110 mm, 160 mm",
        "PVC-U inch class C | 2 in, 3 in, 4 in",
        "PVC-U inch class E | 1/2 in, 1-1/2 in, 2 in",
        "rubber hose | 1 in, 25 mm, 50 mm"
      })
  void pipes(String material, String sizes) {
    for (String size : sizes.split(", ")) {
      assertFalse(CATALOGUE.findPipe(material, size).orElseThrow().source().isBlank(), size);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "barbed coupler",
        "barbed adapter",
        "barbed elbow",
        "barbed tee run",
        "barbed tee branch",
        "globe valve open",
        "angle valve open",
        "knife gate open",
        "three-way valve straight",
        "three-way valve branch",
        "strainer basket",
        "strainer wye",
        "union",
        "bulkhead"
      })
  void fittingsWithTheirRange(String type) {
    List<FittingLoss> rows =
        CATALOGUE.listFittings().stream().filter(row -> row.type().equals(type)).toList();
    assertFalse(rows.isEmpty());
    for (FittingLoss row : rows) {
      assertFalse(row.source().isBlank());
      assertTrue(row.least() < row.greatest(), type);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UV unit",
        "pressure filter",
        "bead filter",
        "sand filter",
        "spillway box",
        "flow meter paddle",
        "flow meter turbine",
        "flow meter float",
        "venturi"
      })
  void devicesCleanAndDirtyMarkedAsCommonPractice(String name) {
    Device device =
        CATALOGUE.listDevices().stream()
            .filter(row -> row.name().equals(name))
            .findFirst()
            .orElseThrow();
    assertTrue(device.source().contains("common practice"), device.source());
  }

  @ParameterizedTest
  @ValueSource(strings = {"mortared flagstone", "planted gravel"})
  void beds(String name) {
    assertFalse(CATALOGUE.findBed(name).orElseThrow().source().isBlank());
  }

  @ParameterizedTest
  @ValueSource(strings = {"metal", "plastic", "stone", "boulders"})
  void lips(String name) {
    assertFalse(CATALOGUE.findLip(name).orElseThrow().source().isBlank());
  }
}
