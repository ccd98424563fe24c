package rillwright.solver.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.solver.network.BasinShape.Row;

class BasinShapeTest {
  /** 8 m² from −0.9 m to a shelf at −0.45 m, 18 m² there, 20 m² at the brim. */
  private static final BasinShape POND =
      new BasinShape(
          List.of(new Row(-0.9, 8), new Row(-0.45, 8), new Row(-0.45, 18), new Row(0.05, 20)));

  @Test
  void holdsNothingAtItsFloor() {
    assertEquals(0, POND.volumeM3(-0.9));
    assertEquals(0, POND.volumeM3(-2));
  }

  @Test
  void areaIsStraightBetweenRowsAndAShelfHasNoDepth() {
    assertEquals(8 * 0.45, POND.volumeM3(-0.45), 1e-14);
    assertEquals(8 * 0.45 + 0.25 * (18 + 19) / 2, POND.volumeM3(-0.2), 1e-14);
    assertEquals(8 * 0.45 + 0.5 * 19, POND.volumeM3(0.05), 1e-14);
  }

  @Test
  void lastAreaGoesOnAboveTheBrim() {
    assertEquals(20 * 0.1, POND.volumeM3(0.15) - POND.volumeM3(0.05), 1e-13);
  }

  @Test
  void oneRowIsABasinWithUprightWalls() {
    BasinShape tub = new BasinShape(List.of(new Row(0, 12)));
    assertEquals(12 * 0.05, tub.volumeM3(0.02) - tub.volumeM3(-0.03), 1e-14);
  }

  @Test
  void refusesWhatIsNoShape() {
    assertThrows(IllegalArgumentException.class, () -> new BasinShape(List.of()));
    List<Row> falling = List.of(new Row(0, 5), new Row(-1, 5));
    assertThrows(IllegalArgumentException.class, () -> new BasinShape(falling));
    assertThrows(IllegalArgumentException.class, () -> new Row(0, -5));
  }
}
