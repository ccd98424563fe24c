package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.command.Run;

/**
 * Every command where what an answer is a share of is nothing: no flow, no difference in level, no
 * area, no loss, no hours, no power. {@link OrderlyRun} holds that no number is shown that is none.
 */
class NothingToDivideByTest {
  private static final String JOB =
      """
      rillwright: 1
      title: Nothing to divide by
      show: metric
      running: {price: 0.3 EUR/kWh, hours: 12 h/day, days: 200 days/year}
      points:
        pond: {kind: basin, level: 0 m, area: 20 m2, overflow: 3 cm}
        chamber: {kind: chamber, floor: -80 cm, intake: -60 cm, area: 0.3 m2}
        split: {kind: tee, elevation: 0 m}
        fall: {kind: fall, crest: 1.5 m, width: 500 mm, lip: stone, target: 1.2 L/s}
        jet: {kind: outlet, elevation: 0.4 m}
        low: {kind: basin, level: 0 m, area: 5 m2}
      lines:
        intake: {from: pond, to: chamber, parts: [skimmer: {width: 40 cm, sill: -15 cm}]}
        supply:
          from: chamber
          to: split
          pipe: {material: PVC-U PN 10, size: 50 mm}
          parts:
            - pump: {model: p, speed: 100 %}
            - check valve: {type: swing}
            - filter: {rating: {flow: 4 m3/h, head: 20 cm}, open top: 30 cm}
            - run: {length: 6 m ± 1 m}
        up:
          from: split
          to: fall
          pipe: {material: PVC-U PN 10, size: 50 mm}
          parts: [valve: {type: ball, open: 100 %, adjustable: yes}, run: 4 m]
        aside:
          from: split
          to: jet
          pipe: {material: PVC-U PN 10, size: 32 mm}
          parts: [valve: {type: gate, open: 50 %}, run: 2 m, gauge: {name: G, elevation: 0 m}]
        between:
          from: pond
          to: low
          pipe: {material: PVC-U PN 10, size: 110 mm}
          parts: [run: 3 m]
      streams:
        main:
          from: fall
          to: pond
          reaches:
            - {step: {height: 1.4 m, width: 40 cm}}
            - {length: 4 m, drop: 10 cm, width: 40 cm, bank: 1, bed: cobble}
      evaporation: {rate: 5 mm/day, splash: 10 %}
      pumps:
        p:
          points:
            - {flow: 0 L/s, head: 4 m, power: 120 W}
            - {flow: 3 L/s, head: 2 m, power: 150 W}
            - {flow: 5 L/s, head: 0 m, power: 160 W}
      readings:
        - {at: fall, flow: 0.8 L/s, within: 10 %}
        - {gauge: G, pressure: 9 kPa, within: 1 kPa}
      conditions:
        fouled: {lines: {intake: {skimmer: {clogged: 60 %}}}}
      """;

  @TempDir private Path folder;

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "as it is | title | title",
        "a pump that stands still | speed: 100 % | speed: 0 %",
        "a fall whose way is shut | open: 100 % | open: 0 %",
        "a skimmer clogged to the full | sill: -15 cm | sill: -15 cm, clogged: 100 %",
        "a crest out of reach | crest: 1.5 m | crest: 9 m",
        "a crest at the pond's level | crest: 1.5 m | crest: 0 m",
        "a pump without power | power: 120 W | power: 0 W",
        "no hours | hours: 12 | hours: 0",
        "no evaporation | rate: 5 mm/day | rate: 0 mm/day",
        "a reading of nothing | flow: 0.8 L/s, within: 10 % | flow: 0 L/s, within: 0.1 L/s",
        "a smallest pipe | size: 32 mm | inside: 0.1 mm, roughness: 0 mm",
        "a least target | target: 1.2 L/s | target: 0.000001 L/s",
        "hardly any area | area: 20 m2 | area: 0.000001 m2"
      })
  void noAnswerIsAShareOfNothing(String name, String what, String by) throws IOException {
    assertTrue(JOB.contains(what), what);
    String file = Scratch.file(folder, JOB.replace(what, by));
    Path sheets = Files.createDirectory(folder.resolve("sheets"));
    Files.writeString(sheets.resolve("q.csv"), "flow [L/s],head [m],power [W]\n0,3,90\n3,0,100\n");
    Files.writeString(sheets.resolve("z.csv"), "flow [L/s],head [m],power [W]\n0,2,0\n3,0,0\n");
    List<List<String>> questions =
        new ArrayList<>(
            List.of(
                List.of("check", file),
                List.of("solve", file, "--conditions"),
                List.of("duty", file),
                List.of("pumps", file, "--from", sheets.toString()),
                List.of("pipes", file, "--line", "up", "--sizes", "63 mm"),
                List.of("balance", file),
                List.of("stream", file)));
    if (name.startsWith("a ")) {
      questions.add(List.of("weak", file));
    }
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < questions.size(); i++) {
      List<String> command = new ArrayList<>(questions.get(i));
      command.addAll(List.of("--format", (name.length() + i) % 2 == 0 ? "text" : "json"));
      try {
        OrderlyRun.of(folder, command);
      } catch (AssertionError e) {
        wrong.add(command + ": " + e.getMessage());
      }
    }
    String odds = Run.of("odds", file, "--samples", "100").out();
    if (OrderlyRun.NO_NUMBER.matcher(odds).find()) {
      wrong.add(odds);
    }
    assertEquals(List.of(), wrong, name);
  }
}
