package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.file.fault.InvalidInput;

class PumpSheetsTest {
  @TempDir private Path folder;

  @Test
  void columnsThatAreNotReadAreReported() throws IOException {
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
  void pointsInAnyOrderAreSortedAndOneNoteSaysSo() throws IOException {
    Files.writeString(folder.resolve("p.csv"), "Q [gph],H [ft]\n900,5\n0,10\n500,8\n");
    Path file =
        Files.writeString(
            folder.resolve("pond.yaml"),
            ProjectText.POINTS
                + "pumps: {p: p.csv, in place: {points: [{flow: 900 gph, head: 5 ft},"
                + " {flow: 0 gph, head: 10 ft}]}}\n");
    assertEquals(
        List.of(
            "pump \"p\": its points are not in order of flow; they are read in that order.",
            "pump \"in place\": its points are not in order of flow; they are read in that order."),
        ProjectReader.read(file, List.of()).notes().stream()
            .filter(note -> note.startsWith("pump"))
            .toList());
  }

  /** Heads, flows and powers of one curve; what is wrong with it must be the same in both forms. */
  @ParameterizedTest
  @CsvSource({
    "0 10 90; 500 8; 900 5 120, ''",
    "0 10; 900 5 90, 'only one point has a power; give it at two points or more, or at none'",
    "0 10, 'a pump''s curve needs two points or more, each with a flow and a head; here is only"
        + " one'",
    "900 5; 500 8; 0 10, ''",
    "900 10; 500 8, '\"10\" is the last and is not below the first, \"8\" in %2$s; a pump''s head"
        + " falls as its flow rises'",
    "0 10; 0 8, '\"0\" is the same as \"0\" in %s; leave one of the two out'",
    "0 10; 900 10, '\"10\" is the last and is not below the first, \"10\" in %s; a pump''s head"
        + " falls as its flow rises'",
    "0 5000; 900 10, '\"5000\" is more than 1000 m; is its unit right?'",
    "0 10 5; 900 5 2e6, '\"2e6\" is more than 1000 kW; is its unit right?'"
  })
  void oneCurveIsJudgedAlikeInASheetAndInTheProject(String points, String message)
      throws IOException {
    StringBuilder sheet = new StringBuilder("flow [gph],head [m],power [W]\n");
    StringBuilder rows = new StringBuilder();
    for (String point : points.split("; ")) {
      String[] values = point.split(" ");
      String power = values.length > 2 ? values[2] : "";
      sheet.append(values[0] + "," + values[1] + "," + power + "\n");
      rows.append("{flow: " + values[0] + " gph, head: " + values[1] + " m");
      rows.append(power.isEmpty() ? "}, " : ", power: " + power + " W}, ");
    }
    Files.writeString(folder.resolve("p.csv"), sheet);
    assertEquals(message.formatted("line 2", "line 3"), faultOf("pumps: {p: p.csv}\n").orElse(""));
    String inline = faultOf("pumps: {p: {points: [" + rows + "]}}\n").orElse("");
    assertEquals(
        message.formatted("point 1", "point 2"), inline.replaceAll(" (gph|m|W)(?=\")", ""));
  }

  /** The only fault of a project, after the name of its column. */
  private Optional<String> faultOf(String pumps) throws IOException {
    Path file = Files.writeString(folder.resolve("pond.yaml"), ProjectText.POINTS + pumps);
    try {
      ProjectReader.read(file, List.of());
      return Optional.empty();
    } catch (InvalidInput e) {
      assertEquals(1, e.faults().size(), () -> e.faults().toString());
      String shown = e.faults().get(0).message();
      return Optional.of(
          shown.replaceFirst("^(pump \"p\": points( 2| 1)?: )?((flow|head|power):? )?", ""));
    }
  }
}
