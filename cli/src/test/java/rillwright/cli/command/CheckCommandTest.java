package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.Main;

/** What {@code check} tells of pump sheets and sections; all data here is invented. */
class CheckCommandTest {
  private static final String PROJECT =
      """
      rillwright: 1
      title: Two steps
      show: us
      water: {temperature: 68 F}
      points:
        pond: {kind: basin, level: 0 ft}
        chamber: {kind: chamber, floor: -36 in, intake: -28 in}
        fall: {kind: fall, crest: 5 ft, width: 24 in, lip: stone, target: 1577 gph}
      lines:
        intake: {from: pond, to: chamber, parts: [{skimmer: {width: 14 in, sill: -5 in}}]}
        supply:
          from: chamber
          to: fall
          pipe: {material: flexible PVC, size: 2 in}
          parts:
            - pump: tank king
            - run: 20 ft
      pumps: {tank king: sheet.csv}
      """;

  @TempDir private Path folder;

  private String notesWith(String sheet, String more) throws IOException {
    Files.writeString(folder.resolve("sheet.csv"), sheet);
    Path file = folder.resolve("pond.yaml");
    Files.writeString(file, PROJECT + more);
    Run run = Run.of("check", file.toString());
    assertEquals("", run.err());
    return run.out().replaceAll("\\s+", " ");
  }

  private String notesWith(String sheet) throws IOException {
    return notesWith(sheet, "");
  }

  @Test
  void aShutOffHeadThatTheSheetLacksIsSaidToBeExtended() throws IOException {
    String notes = notesWith("flow [gph],head [ft]\n1000,24\n2000,20\n3000,3\n");
    assertTrue(
        notes.contains(
            "pump \"tank king\": its data sheet begins at 1,000 gph; the shut-off head of"),
        notes);
    assertTrue(notes.contains("is extended from there"), notes);
    assertTrue(notes.contains("ft, extended"), notes);
  }

  /** A crest of 5 ft: over the head at no flow, and under the hump in the second. */
  @ParameterizedTest
  @CsvSource({"4.5, 'nothing flows there.'", "8, 'a pump whose curve has a hump may not start.'"})
  void aCrestOverTheHeadAtNoFlow(double hump, String said) throws IOException {
    String notes = notesWith("flow [gph],head [ft]\n0,4.6\n1000," + hump + "\n3000,1\n");
    assertTrue(notes.contains(said + " Check its level and the pump's data sheet."), notes);
  }

  @Test
  void aRowThatIsHigherThanTheOneBeforeIsNamed() throws IOException {
    String notes = notesWith("flow [gph],head [ft]\n0,20\n1000,19\n2000,22.5\n3000,3\n");
    assertTrue(
        notes.contains(
            "pump \"tank king\": its head at 2,000 gph, 22.5 ft, is not below the 19 ft at 1,000"
                + " gph; check that row."),
        notes);
  }

  @Test
  void aSheetThatEndsHighIsSaidToBeExtended() throws IOException {
    String notes = notesWith("flow [gph],head [ft]\n0,20\n1000,19\n2000,15\n");
    assertTrue(
        notes.contains(
            "pump \"tank king\": its data sheet ends at 2,000 gph, where it still makes 15 ft;"
                + " beyond, its curve is extended"),
        notes);
  }

  @Test
  void aSheetThatSaysAllIsReportedWithoutNotes() throws IOException {
    String notes = notesWith("flow [gph],head [ft]\n0,20\n1000,19\n2000,15\n3000,3\n");
    assertFalse(notes.contains("extended"), notes);
    assertFalse(notes.contains("is that row right"), notes);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "60 in | line \"supply\": the pump's data sheet requires 60 in of water over its inlet;"
            + " over the intake of \"chamber\" there are 28 in at most",
        "8 in | line \"supply\": the pump's data sheet requires 8 in of water over its inlet;"
            + " \"solve\" gives the depth"
      })
  void whatASheetAsksForOverTheInletIsHeldAgainstTheChamber(String needed, String note)
      throws IOException {
    String notes =
        notesWith("# min submergence: " + needed + "\nflow [gph],head [ft]\n0,20\n3000,3\n");
    assertTrue(notes.contains(note), notes);
  }

  @Test
  void sectionsThatOnlyOneCommandUsesAreReported() throws IOException {
    String notes =
        notesWith(
            "flow [gph],head [ft]\n0,20\n3000,3\n",
            "evaporation: 5 mm/day\nreadings: [{at: fall, flow: 1500 gph, within: 7 %}]\n");
    assertTrue(
        notes.contains(
            "section \"evaporation\" is used only by \"rillwright stream\", \"mend\" and"
                + " \"sheet\""),
        notes);
    assertTrue(notes.contains("section \"readings\" is used only by \"rillwright weak\""), notes);
    assertFalse(notes.contains("section \"signs\""), notes);
  }

  @Test
  void everyCommandThatUsesConditionsIsNamed() throws IOException {
    String notes =
        notesWith(
            "flow [gph],head [ft]\n0,24\n3000,3\n",
            "conditions: {low: {points: {pond: {level: -1 in}}}}\n");
    String note =
        notes.replaceAll(".*the section \"conditions\" is used only by (.*?)( - .*)?$", "$1");
    Main.commandLine()
        .getSubcommands()
        .forEach(
            (name, command) ->
                assertEquals(
                    command.getCommandSpec().optionsMap().containsKey("--conditions"),
                    note.contains(name + "\""),
                    name + " in " + note));
  }

  @Test
  void whatIsTakenInAStreamIsReported() throws IOException {
    String notes =
        notesWith(
            "flow [gph],head [ft]\n0,24\n3000,3\n",
            """
            evaporation: {air: 80 F, humidity: 50 %, wind: 5 mph}
            streams:
              main:
                from: fall
                to: pond
                reaches:
                  - {length: 9 ft, drop: 1 ft, width: 2 ft, bed: cobble, gravel: {depth: 3 in}}
                  - {step: {height: 1 ft, width: 2 ft}}
                  - {length: 9 ft, drop: 1 ft, width: 2 ft, bank: 1, bed: cobble, gravel: {depth: 3 in, voids: 30 %, drains: 10 %}}
                  - {pool: {area: 9 ft2, depth: 9 in, crest width: 2 ft}}
                  - {length: 9 ft, drop: 1 ft, width: 2 ft, bank: 1, bed: {n: 0.04}}
            """);
    for (String note :
        new String[] {
          // the size of cobble in the catalogue, 90 mm
          "reaches 1, 3: the bed \"cobble\" is computed by the stone-size formula, D84 3.54 in -",
          "reach 5: the bed is computed by Manning's n of 0.04 -",
          "stream \"main\": reach 1: the banks are taken as vertical;",
          "reach 1: of the gravel 38 % is taken as voids (common practice, no source);",
          "reach 1: of the water in the gravel 50 % is taken to drain when the pump stops",
          "reach 4: the pool's crest is taken as stone;",
          "taken from all open water, the streams' too: 0.",
          "in a day by the weather, with the water as warm as the file says; nothing is taken for"
              + " splash"
        }) {
      assertTrue(notes.contains(note), note + " in " + notes);
    }
  }
}
