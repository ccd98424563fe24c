package rillwright.cli.file.fault;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class FaultListTest {
  private final FaultList faults = new FaultList("pond.yaml");

  private String shown() {
    return assertThrows(InvalidInput.class, faults::throwIfAny).getMessage();
  }

  @Test
  void faultsAreReportedInTheOrderOfTheirPlacesTheProjectFirst() {
    faults.add(new Place("pump.csv", 1, 1), "c");
    faults.add(new Place("pond.yaml", 12, 3), "b");
    faults.add(new Place("pond.yaml", 2, 30), "a");
    faults.add(new Place("pond.yaml", 12, 1), "ab");
    assertEquals(
        "pond.yaml:2:30: a\npond.yaml:12:1: ab\npond.yaml:12:3: b\npump.csv:1:1: c", shown());
  }

  @Test
  void theSameFaultIsReportedOnce() {
    faults.add(new Place("pond.yaml", 2, 3), "a");
    faults.add(new Place("pond.yaml", 2, 3), "a");
    assertEquals("pond.yaml:2:3: a", shown());
  }

  @Test
  void veryManyFaultsAreCutShort() {
    for (int line = 1; line <= 250; line++) {
      faults.add(new Place("pond.yaml", line, 1), "x");
    }
    InvalidInput shown = assertThrows(InvalidInput.class, faults::throwIfAny);
    assertEquals(101, shown.faults().size());
    assertEquals(
        "pond.yaml:101:1: and 150 more faults from here on", shown.faults().get(100).toString());
  }

  /** Ten thousand misspelt names among as many were compared for minutes. */
  @Test
  void whatWasMeantIsLookedForOnlyWhereItIsShown() {
    AtomicInteger searches = new AtomicInteger();
    for (int line = 1; line <= 10_000; line++) {
      faults.add(
          new Place("pond.yaml", line, 1),
          "no x",
          () -> "; did you mean y" + searches.incrementAndGet());
    }
    InvalidInput shown = assertThrows(InvalidInput.class, faults::throwIfAny);
    assertEquals("pond.yaml:1:1: no x; did you mean y1", shown.faults().get(0).toString());
    assertEquals(100, searches.get());
  }

  @Test
  void nothingWrongIsNothingThrown() {
    assertDoesNotThrow(faults::throwIfAny);
  }
}
