package rillwright.cli.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pipes agree with the published tables that they are said to be from. */
class PublishedPipeSizesTest {
  private static final double INCH_M = 0.0254;
  private static final double HALF_A_THOUSANDTH_M = 0.0005 * INCH_M;
  private static final double EXACT_M = 1e-9;
  private final Catalogue catalogue = Catalogue.standard();

  /**
   * Hydraulic Institute, Engineering Data Book, table of plastic schedule pipe, PVC per ASTM D1785:
   * outside diameter, least wall of schedule 40 and 80, inches.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "1/2 in, 0.840, 0.109, 0.147",
    "3/4 in, 1.050, 0.113, 0.154",
    "1 in, 1.315, 0.133, 0.179",
    "1-1/4 in, 1.660, 0.140, 0.191",
    "1-1/2 in, 1.900, 0.145, 0.200",
    "2 in, 2.375, 0.154, 0.218",
    "2-1/2 in, 2.875, 0.203, 0.276",
    "3 in, 3.500, 0.216, 0.300",
    "4 in, 4.500, 0.237, 0.337",
    "6 in, 6.625, 0.280, 0.432"
  })
  void schedulePipeHasTheStandardsOutsideAndWallAndTheAverageBetweenThem(
      String size, double outside, double wall40, double wall80) {
    assertScheduleRow("PVC schedule 40", size, outside, wall40);
    assertScheduleRow("PVC schedule 80", size, outside, wall80);
  }

  /**
   * The stated convention: the average wall is 6 % over the least; printed averages to 0.001 in.
   */
  private void assertScheduleRow(String material, String size, double outside, double wall) {
    TableRow row = row(material, size);
    assertEquals(outside * INCH_M, row.lengthM("outside"), EXACT_M);
    assertEquals(wall * INCH_M, row.lengthM("wall"), EXACT_M);
    double computed = (outside - 2 * 1.06 * wall) * INCH_M;
    assertEquals(computed, insideM(material, size), 0.001 * INCH_M, material + " " + size);
  }

  /** Published dimension tables of PVC pipe, average inside diameter, inches. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "PVC schedule 40, 1 in, 1.033",
    "PVC schedule 40, 1-1/4 in, 1.364",
    "PVC schedule 40, 1-1/2 in, 1.592",
    "PVC schedule 40, 2 in, 2.049",
    "PVC schedule 40, 2-1/2 in, 2.445",
    "PVC schedule 40, 3 in, 3.042",
    "PVC schedule 40, 4 in, 3.998",
    "PVC schedule 80, 1-1/2 in, 1.476",
    "PVC schedule 80, 2 in, 1.913",
    "PVC schedule 80, 3 in, 2.864"
  })
  void schedulePipeHasThePublishedAverageInside(String material, String size, double inside) {
    assertEquals(inside * INCH_M, insideM(material, size), EXACT_M);
  }

  /** Flexible PVC is computed with the inside of schedule 40, whose outside it has. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "1/2 in",
    "3/4 in",
    "1 in",
    "1-1/4 in",
    "1-1/2 in",
    "2 in",
    "2-1/2 in",
    "3 in",
    "4 in"
  })
  void flexiblePipeHasTheInsideOfScheduleFortyPipe(String size) {
    assertEquals(insideM("PVC schedule 40", size), insideM("flexible PVC", size), EXACT_M);
  }

  /**
   * ISO 4427 / EN 12201, least walls of PE 100 in mm at SDR 17 and SDR 11; a dash where the size is
   * not made. The inside is the outside less two walls.
   */
  @ParameterizedTest(name = "{0} mm")
  @CsvSource({
    "20, -, 2.0",
    "25, -, 2.3",
    "32, 2.0, 3.0",
    "40, 2.4, 3.7",
    "50, 3.0, 4.6",
    "63, 3.8, 5.8",
    "75, 4.5, 6.8",
    "90, 5.4, 8.2",
    "110, 6.6, 10.0",
    "125, 7.4, 11.4",
    "160, 9.5, 14.6"
  })
  void polyethylenePressurePipeHasTheStandardsWalls(int outside, String sdr17, String sdr11) {
    assertMetricWall("PE100 SDR 17", outside, sdr17);
    assertMetricWall("PE100 SDR 11", outside, sdr11);
  }

  /**
   * EN 1452-2 (from memory), walls in mm: PN 10 is SDR 21 up to 90 mm, SDR 26 above; PN 16 is SDR
   * 13.6 up to 90 mm, SDR 17 above.
   */
  @ParameterizedTest(name = "{0} mm")
  @CsvSource({
    "20, -, 1.5",
    "25, -, 1.9",
    "125, 4.8, 7.4",
    "140, 5.4, 8.3",
    "200, 7.7, 11.9",
    "32, 1.6, 2.4",
    "40, 1.9, 3.0",
    "50, 2.4, 3.7",
    "63, 3.0, 4.7",
    "75, 3.6, 5.6",
    "90, 4.3, 6.7",
    "110, 4.2, 6.6",
    "160, 6.2, 9.5"
  })
  void metricPvcHasTheStandardsWalls(int outside, String pn10, String pn16) {
    assertMetricWall("PVC-U PN 10", outside, pn10);
    assertMetricWall("PVC-U PN 16", outside, pn16);
    if (!pn10.equals("-")) {
      assertEquals(outside / (outside <= 90 ? 21.0 : 26.0), Double.parseDouble(pn10), 0.1);
    }
    assertEquals(outside / (outside <= 90 ? 13.6 : 17.0), Double.parseDouble(pn16), 0.15);
  }

  private void assertMetricWall(String material, int outsideMm, String wallMm) {
    String size = outsideMm + " mm";
    if (wallMm.equals("-")) {
      assertEquals(-1, catalogue.sizesOf(material).indexOf(size), material + " " + size);
      return;
    }
    double wall = Double.parseDouble(wallMm) / 1000;
    assertEquals(wall, row(material, size).lengthM("wall"), EXACT_M);
    assertEquals(outsideMm / 1000.0 - 2 * wall, insideM(material, size), EXACT_M);
  }

  /** ASTM D2239 (from memory), inside diameter, inches. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "1/2 in, 0.622", "3/4 in, 0.824", "1 in, 1.049",
    "1-1/4 in, 1.380", "1-1/2 in, 1.610", "2 in, 2.067"
  })
  void polyethyleneCoilHasTheStandardsInside(String size, double inside) {
    assertEquals(inside * INCH_M, insideM("polyethylene", size), HALF_A_THOUSANDTH_M);
  }

  /** Hydraulic Institute, Engineering Data Book: 0.000007 ft for all plastic pipe. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"PVC schedule 40", "PVC schedule 80", "PVC-U PN 10", "PVC-U PN 16"})
  void rigidPvcHasThePublishedRoughness(String material) {
    String size = catalogue.sizesOf(material).get(0);
    double roughness = catalogue.findPipe(material, size).orElseThrow().roughnessM();
    assertEquals(0.000007 * 0.3048, roughness, 5e-8);
  }

  private double insideM(String material, String size) {
    return catalogue.findPipe(material, size).orElseThrow().insideM();
  }

  private static TableRow row(String material, String size) {
    List<TableRow> rows = CatalogueTable.read("pipes.csv", Function.identity());
    return rows.stream()
        .filter(row -> row.text("material").equals(material) && row.text("size").equals(size))
        .findFirst()
        .orElseThrow();
  }
}
