package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.weak.BuiltJob;

class InventedPumpTest {
  private static final String INVENTED =
      """
        planned:
          kind: invented
          points: [{flow: 0 gph, head: 20 ft}, {flow: 4000 gph, head: 2 ft}]
      """;

  /** Nobody can have built in a pump that stands for one to be chosen. */
  @Test
  void aPumpWithAnInventedCurveIsNoOtherPump() throws IOException {
    Path pond = Path.of("../examples/small-pond/pond.yaml");
    String text = Files.readString(pond) + INVENTED;
    Set<String> others = BuiltJob.of(ProjectReader.of(text, pond)).facts().sheets().keySet();
    assertEquals(Set.of("P-110", "P-180"), others);
  }
}
