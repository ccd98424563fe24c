package rillwright.cli.study.mend.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.ProjectReader;
import rillwright.solver.stream.StreamBudgetFinder;

/** How much a pond may fall while it runs. */
class RoomTest {
  private static Room of(String file, String... set) {
    Path path = Path.of("..", "examples", "long-stream", file);
    return Room.in(StreamBudgetFinder.find(ProjectReader.read(path, List.of(set)).streams()))
        .get(0);
  }

  @Test
  void pondThatStarvesAtOnceHasLittle() {
    Room room = of("dry.yaml");
    assertTrue(room.isLittle());
    assertEquals(0, room.volumeM3(), 1e-3);
    assertEquals(0, room.days().orElseThrow(), 1e-3);
  }

  /** 36 L, while 142 L more may be in transit. */
  @Test
  void pondWithLessThanMayBeInTransitHasLittle() {
    Room room = of("stream.yaml");
    assertTrue(room.isLittle());
    assertEquals(0.036, room.volumeM3(), 5e-4);
    assertTrue(room.days().isEmpty());
  }

  @Test
  void deeperSillLeavesPlenty() {
    assertFalse(of("stream.yaml", "lines.intake.skimmer.sill=-200 mm").isLittle());
  }
}
