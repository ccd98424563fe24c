package rillwright.solver.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.network.TerracedPond.Shelf;

/**
 * A pond of 4 m by 3 m, 1.2 m deep: shelves of 0.3 m at 0.45 m and of 0.4 m at 0.9 m. By hand the
 * water's surface is 12 m², 3.4 × 2.4 = 8.16 m² below the first and 2.6 × 1.6 = 4.16 m² below the
 * second shelf.
 */
class TerracedPondTest {
  private static final List<Shelf> SHELVES = List.of(new Shelf(0.45, 0.3), new Shelf(0.9, 0.4));

  @ParameterizedTest(name = "{0} m above the brim: {1} m²")
  @CsvSource({"0, 12", "0.1, 12", "-0.44, 12", "-0.46, 8.16", "-0.89, 8.16", "-0.91, 4.16"})
  void areaIsThatOfTheRectangleWithinTheShelves(double levelM, double areaM2) {
    BasinShape shape = new TerracedPond(4, 3, 1.2, SHELVES).shape(0);

    assertEquals(areaM2, shape.areaM2(levelM), 1e-12);
  }

  @Test
  void volumeIsTheClosedForm() {
    BasinShape shape = new TerracedPond(4, 3, 1.2, SHELVES).shape(0.25);

    assertEquals(12 * 0.45 + 8.16 * 0.45 + 4.16 * 0.3, shape.volumeM3(0.25), 1e-12);
    assertEquals(-0.95, shape.floorM(), 1e-12);
  }

  @Test
  void withoutShelvesItIsABox() {
    assertEquals(14.4, new TerracedPond(4, 3, 1.2, List.of()).shape(0).volumeM3(0), 1e-12);
  }

  @Test
  void shelvesThatDoNotFitAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new TerracedPond(4, 3, 1.2, List.of(new Shelf(1.2, 0.3))));
    assertThrows(
        IllegalArgumentException.class,
        () -> new TerracedPond(4, 3, 1.2, List.of(new Shelf(0.45, 1.5))));
    assertThrows(
        IllegalArgumentException.class,
        () -> new TerracedPond(4, 3, 1.2, List.of(new Shelf(0.5, 0.3), new Shelf(0.5, 0.3))));
  }
}
