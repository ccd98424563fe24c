package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PumpSheetsTest {
  @TempDir private Path folder;

  @Test
  void columnsThatAreNotReadAreTold() throws IOException {
    Files.writeString(
        folder.resolve("p.csv"), "flow [gph],head [ft],colour\n0,10,red\n900,5,red\n");
    Path file =
        Files.writeString(folder.resolve("pond.yaml"), ProjectText.POINTS + "pumps: {p: p.csv}\n");
    assertEquals(
        "pump \"p\": only flow, head and power are read from its data sheet; passed over:"
            + " \"colour\".",
        ProjectReader.read(file, List.of()).notes().get(0));
  }

  @Test
  void powerIsWrittenAtEveryPointOrAtNone() {
    assertEquals(
        "pond.yaml:14:77: pump \"p\": points 2: power: write the power at every point or at none",
        ProjectText.faultsOf(
            ProjectText.POINTS
                + "pumps:\n  p:\n    points: [{flow: 0 gph, head: 10 ft},"
                + " {flow: 900 gph, head: 5 ft, power: 90 W}]\n"));
  }
}
