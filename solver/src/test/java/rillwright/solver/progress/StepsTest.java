package rillwright.solver.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Pieces of work are counted whichever thread does them. */
class StepsTest {
  private final List<Integer> shown = new ArrayList<>();

  @Test
  void eachIsReportedOnceAndInOrder() {
    Steps steps =
        new Steps(
            (done, all) -> {
              assertEquals(100, all);
              return shown.add(done);
            },
            100);
    IntStream.range(0, 100).parallel().forEach(any -> steps.done(1));
    assertEquals(IntStream.rangeClosed(1, 100).boxed().toList(), shown);
  }

  @Test
  void askingTellsNothing() {
    Steps steps = new Steps((done, all) -> shown.add(done), 3);
    steps.done(0);
    assertEquals(List.of(), shown);
  }

  @Test
  void whoStopsIsNotAskedAgain() {
    Steps steps =
        new Steps(
            (done, all) -> {
              shown.add(done);
              return done < 2;
            },
            3);
    steps.done(1);
    Stopped stopped = assertThrows(Stopped.class, () -> steps.done(1));
    assertEquals("stopped after 2 of 3", stopped.getMessage());
    assertThrows(Stopped.class, () -> steps.done(0));
    assertThrows(Stopped.class, () -> steps.done(1));
    assertEquals(List.of(1, 2), shown);
  }
}
