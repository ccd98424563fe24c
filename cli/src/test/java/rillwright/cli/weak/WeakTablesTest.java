package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands in the columns of READ and READ NEXT. */
class WeakTablesTest {
  @TempDir private Path folder;

  private WeakCall read(String job, String visit) throws IOException {
    Path file = Files.writeString(folder.resolve("visit.yaml"), visit);
    WeakCall call = WeakCall.about(job, "--readings", file.toString());
    assertEquals(0, call.status(), call.err());
    return call;
  }

  /** The lines of READ NEXT, its heading first. */
  private static List<String> next(WeakCall call) {
    return call.out()
        .lines()
        .dropWhile(line -> !line.startsWith("READ NEXT"))
        .takeWhile(line -> !line.startsWith("  In order of what a minute"))
        .toList();
  }

  private String gauged(int lines) throws IOException {
    StringBuilder points = new StringBuilder("points:\n  pond: {kind: basin, level: 0 m}\n");
    StringBuilder all = new StringBuilder("lines:\n");
    for (int i = 0; i < lines; i++) {
      points.append("  f" + i + ": {kind: outlet, elevation: -1 m}\n");
      all.append("  l" + i + ": {from: pond, to: f" + i + ", pipe: {inside: 50 mm,");
      all.append(" roughness: 0.01 mm}, parts: [{gauge: {name: G" + i + ", elevation: -1 m}},");
      all.append(" {run: 5 m}, {valve: {type: ball, open: 80 %}}]}\n");
    }
    return Files.writeString(folder.resolve("gauged.yaml"), points.toString() + all).toString();
  }

  /** The state with a valve shut is balanced for every cause, so only some valves are. */
  @Test
  void ofManyValvesItIsSaidWhichCouldBeShut() throws IOException {
    String said = "Gauges with a valve shut are considered for the first 12 of 13 valves.";
    String visit = "readings: [{at: f0, flow: 1 L/s}]";
    assertTrue(read(gauged(13), visit).flat().contains(said));
    assertFalse(read(gauged(12), visit).flat().contains("are considered for the first"));
  }

  /** "None of these" says that anything may be: the columns go to causes that say something. */
  @Test
  void theColumnsAreThoseOfNamedCauses() throws IOException {
    String visit =
        """
        readings:
          - {at: fall, bucket: 5 gal, time: 8.1 s, within: 7 %}
          - {gauge: G1, pressure: 43 psi}
          - {gauge: G2, pressure: 4.1 psi, within: 0.25 psi}
        """;
    WeakCall call = read(WeakCall.JOB, visit);
    assertFalse(call.out().contains("  anything"), call.out());
    assertTrue(call.flat().contains("by the file by cause B"), call.flat());
    assertTrue(call.out().contains("\n  B   "), "the letter is named: " + call.out());
    assertFalse(call.out().contains("look at the likeliest cause itself"), call.out());
    String again = "Read again what fits least, gauge G1 (43 psi read, by B ";
    assertTrue(call.flat().contains("No further reading adds much. " + again), call.flat());
    assertTrue(call.flat().contains("A, none of these: " + again), call.flat());

    Path picture = folder.resolve("why.svg");
    Path visitFile = folder.resolve("visit.yaml");
    WeakCall.about(WeakCall.JOB, "--readings", visitFile.toString(), "--chart", picture.toString());
    assertTrue(
        Files.readString(picture).contains("by the file 5.5 psi, by B "), "named in the picture");

    WeakCall gravity = read("../examples/header-pond/troughs.yaml", "readings: []");
    assertTrue(next(gravity).get(0).matches(".*by A +by B +by C.*"), gravity.out());
    assertFalse(gravity.out().contains("  anything"), gravity.out());
  }

  /** What all causes in columns would show alike stands beside one that would not. */
  @Test
  void noRowShowsTheSameValueThriceAndNothingElse() throws IOException {
    for (String job :
        List.of(
            "small-pond/pond.yaml",
            "long-stream/stream.yaml",
            "fish-pond/pond.yaml",
            "twin-falls/falls.yaml",
            "header-pond/troughs.yaml")) {
      List<String> rows = next(read("../examples/" + job, "readings: []"));
      assertTrue(rows.size() > 3, job);
      List<String> begun = rows.stream().filter(row -> row.matches("  \\d+.*")).toList();
      for (String row : begun) {
        String values = row.substring(row.indexOf(" min") + 4).strip();
        Set<String> distinct = new HashSet<>(List.of(values.split("  +")));
        assertTrue(distinct.size() > 1, job + ": " + row);
      }
    }
  }

  /** With flow and watts as a kinked hose has them, only the low pond moves the pond's level. */
  @Test
  void aCauseThatWouldShowOtherwiseStandsBesideThoseThatAreAlike() throws IOException {
    String visit =
        """
        readings:
          - {at: fall, flow: 1500 gph, within: 20 %}
        """;
    WeakCall call = read("../examples/small-pond/pond.yaml", visit);
    assertTrue(call.flat().matches(".* [A-Z]: -?[0-9.]+ in .*"), call.out());
  }

  /** A meter on the supply and a drawdown of the chamber are among what tells most there. */
  @Test
  void aLargeFlowIsReadWithCare() throws IOException {
    String flat =
        read(
                "../examples/small-pond/pond.yaml",
                """
                readings:
                  - {at: fall, flow: 1500 gph}
                  - {at: fall, crest head: 0.66 in}
                  - {look: chamber, at: chamber, seen: calm}
                  - {pump: supply, power: 110 W}
                  - {gauge: G1, pressure: 1.4 psi}
                  - {at: chamber, level: 0 in}
                """)
            .flat();
    assertTrue(flat.contains("# Flow in line \"supply\""), flat);
    assertTrue(flat.contains("# Clamp-on meter: on stiff pipe that runs full"), flat);
    assertTrue(flat.contains("^ Flow drawn from \"chamber\""), flat);
    assertTrue(flat.contains("a board, never a hand"), flat);
    assertTrue(flat.contains("Hands, hair and clothes stay clear of mouth and suction"), flat);
  }

  @Test
  void howMuchAReadingTellsIsExplainedOnce() throws IOException {
    String flat = read(WeakCall.JOB, "readings: []").flat();
    assertEquals(2, flat.split("\"Much\" is nearly what", -1).length);
  }

  /**
   * A gauge downstream of a closed check valve and a shut valve has nothing to show, and that is no
   * 0.
   */
  @Test
  void whereNothingIsToBeReadItSaysSo() throws IOException {
    String visit =
        """
        readings:
          - {at: fall, flow: 2000 gph}
          - {gauge: G2, pressure: 1 psi, when: valve shut, valve: supply}
          - {gauge: G1, pressure: 1 psi, when: pump off}
        """;
    WeakCall call = read(WeakCall.JOB, visit);
    assertTrue(call.out().contains("no reading"), call.out());
    assertTrue(
        call.flat().contains("\"No reading\" by the file: the place is cut off"), call.out());
    assertFalse(call.out().contains("nothing  "), call.out());
  }
}
