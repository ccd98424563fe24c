package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.curves.sheet.fact.Price;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.water.Water;

class ProjectReaderTest {
  private static final Path EXAMPLE = ProjectText.FOLDER.resolve("demo-30.yaml");

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("pond.yaml"), text);
  }

  private static String faultsOf(Path file) {
    return assertThrows(InvalidInput.class, () -> ProjectReader.read(file, List.of())).getMessage();
  }

  @Test
  void theWholeExampleIsRead() {
    Project project = ProjectReader.read(EXAMPLE, List.of());
    assertEquals("Demo 30 stream", project.title());
    assertEquals(Show.US, project.show());
    assertEquals(5, project.network().points().size());
    assertEquals(
        List.of("intake", "supply", "upper", "side"),
        project.network().lines().stream().map(line -> line.name().value()).toList());
    assertEquals(420 * 0.3048, project.network().siteElevationM(), 1e-9);
    assertEquals(Water.at((62 - 32) * 5 / 9.0), project.network().water());
    assertEquals(Optional.of(new Price(0.17, "USD")), project.running().price());
    assertEquals(210, project.running().daysPerYear().orElseThrow());
    assertEquals(List.of("demo 40"), List.copyOf(project.sheets().keySet()));
    assertEquals(List.of(), project.notes());
  }

  @Test
  void thingsKnowWhereTheyAreWritten() {
    WhereWritten places = ProjectReader.read(EXAMPLE, List.of()).places();
    String name = EXAMPLE.toString();
    assertEquals(new Place(name, 10, 3), places.ofPoint(new PointName("pond")));
    assertEquals(new Place(name, 18, 3), places.ofLine(new LineName("intake")));
    assertEquals(new Place(name, 22, 9), places.ofPart(new LineName("intake"), 0));
    assertEquals(Place.whole(name), places.ofPoint(new PointName("no such point")));
  }

  @Test
  void aSheetIsFoundBesideTheProject() throws IOException {
    Files.createDirectories(folder.resolve("pumps"));
    Files.copy(
        ProjectText.FOLDER.resolve("pumps/demo-40.csv"), folder.resolve("pumps/demo-40.csv"));
    Path file = file(Files.readString(EXAMPLE));
    assertEquals(4, ProjectReader.read(file, List.of()).network().lines().size());
  }

  @Test
  void aMissingSheetIsReportedWhereItIsNamed() throws IOException {
    Path file = file(Files.readString(EXAMPLE));
    assertEquals(
        file
            + ":52:12: pump \"demo 40\": "
            + folder.resolve("pumps/demo-40.csv")
            + ": there is no such file",
        faultsOf(file));
  }

  @Test
  void faultsInASheetAreReportedInTheSheetAfterThoseOfTheProject() throws IOException {
    Path sheet = Files.writeString(folder.resolve("p.csv"), "flow [gph],head [ft]\n0,ten\n100,5\n");
    Path file = file(ProjectText.POINTS + "pumps: {p: p.csv}\nshow: imperial\n");
    List<String> shown = faultsOf(file).lines().toList();
    assertEquals(2, shown.size(), shown.toString());
    assertTrue(
        shown.get(0).startsWith(file + ":13:7: show: \"imperial\" is not known"), shown.get(0));
    assertTrue(shown.get(1).startsWith(sheet + ":2:3: "), shown.get(1));
  }

  @Test
  void changesAreAppliedFirst() {
    Project project =
        ProjectReader.read(EXAMPLE, List.of("lines.intake.skimmer.clogged=40 %", "show=metric"));
    Skimmer skimmer = (Skimmer) project.network().line(new LineName("intake")).parts().get(0);
    assertEquals(0.4, skimmer.clogged(), 1e-12);
    assertEquals(Show.METRIC, project.show());
  }

  @Test
  void aWrongChangeIsReportedAsThatChange() {
    InvalidInput shown =
        assertThrows(
            InvalidInput.class,
            () -> ProjectReader.read(EXAMPLE, List.of("lines.intake.skimmer.clogged=40")));
    assertEquals(
        "--set \"lines.intake.skimmer.clogged=40\": line \"intake\": skimmer: clogged: \"40\" has"
            + " no unit; write for example \"40 %\"",
        shown.getMessage());
  }

  @Test
  void allWrongChangesAreReportedTogether() {
    InvalidInput shown =
        assertThrows(
            InvalidInput.class,
            () ->
                ProjectReader.read(EXAMPLE, List.of("lines.intak.run=3 ft", "points.pond.level")));
    assertEquals(2, shown.faults().size(), shown.getMessage());
  }

  @Test
  void theJsonTwinOfAProjectIsTheSameNetwork() {
    String yaml =
        """
        rillwright: 1
        title: twin
        show: metric
        water: {temperature: 12 C}
        points:
          pond: {kind: basin, level: 0 m, area: 20 m2}
          pit: {kind: chamber, floor: -1 m, intake: -80 cm}
          fall: {kind: fall, crest: 1.2 m, width: 60 cm, lip: metal, target: 120 gph/in}
        lines:
          intake:
            from: pond
            to: pit
            parts:
              - skimmer: {width: 30 cm, sill: -9 cm, door: no}
          supply:
            from: pit
            to: fall
            pipe: {material: flexible PVC, size: 2 in}
            entrance: {k: .3}
            parts:
              - pump: {model: p, speed: 90 %}
              - run: 12 m
              - valve: {type: ball, open: 70 %, adjustable: yes}
              - fitting: {type: elbow 90, count: 4}
        pumps:
          p: {points: [{flow: 0 L/s, head: 7.2 m, power: 250 W}, {flow: 5.2 L/s, head: 0 m, power: 410 W}]}
        """;
    String json =
        """
        {"rillwright": 1, "title": "twin", "show": "metric", "water": {"temperature": "12 C"},
         "points": {
          "pond": {"kind": "basin", "level": "0 m", "area": "20 m2"},
          "pit": {"kind": "chamber", "floor": "-1 m", "intake": "-80 cm"},
          "fall": {"kind": "fall", "crest": "1.2 m", "width": "60 cm", "lip": "metal",
                   "target": "120 gph/in"}},
         "lines": {
          "intake": {"from": "pond", "to": "pit", "parts": [
            {"skimmer": {"width": "30 cm", "sill": "-9 cm", "door": false}}]},
          "supply": {"from": "pit", "to": "fall",
            "pipe": {"material": "flexible PVC", "size": "2 in"}, "entrance": {"k": 0.3},
            "parts": [{"pump": {"model": "p", "speed": "90 %"}}, {"run": "12 m"},
              {"valve": {"type": "ball", "open": "70 %", "adjustable": true}},
              {"fitting": {"type": "elbow 90", "count": 4}}]}},
         "pumps": {"p": {"points": [
            {"flow": "0 L/s", "head": "7.2 m", "power": "250 W"},
            {"flow": "5.2 L/s", "head": "0 m", "power": "410 W"}]}}}
        """;
    assertEquals(shown(ProjectText.read(yaml)), shown(ProjectText.read(json)));
  }

  /** All that a project says, without where; a pump's curve by a point of it. */
  private static String shown(Project project) {
    String sheets =
        project.sheets().values().stream()
            .map(sheet -> sheet.curve().points() + " " + sheet.curve().headAt(0.002))
            .toList()
            .toString();
    return String.join(
            "\n",
            project.title(),
            project.show().toString(),
            project.network().water().toString(),
            project.network().points().toString(),
            project.network().lines().toString(),
            sheets)
        .replaceAll("PumpCurve@[0-9a-f]+", "PumpCurve");
  }
}
