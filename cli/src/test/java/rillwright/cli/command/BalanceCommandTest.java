package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BalanceCommandTest {
  private static final String PROJECT = TwinFalls.FOLDER.resolve("ball-valves.yaml").toString();

  @TempDir private Path folder;

  private static void assertRefuses(Run run, String... words) {
    assertEquals(2, run.status(), run.err());
    assertEquals("", run.out());
    for (String word : words) {
      assertTrue(run.err().contains(word), run.err());
    }
    assertFalse(run.err().contains("\tat "), run.err());
  }

  private String changed(String from, String to) throws IOException {
    return TwinFalls.changed("ball-valves.yaml", folder, from, to);
  }

  @Test
  void unknownLineIsReportedWithWhatWasMeant() {
    assertRefuses(Run.of("balance", PROJECT, "--valves", "lwo"), "\"lwo\"", "did you mean \"low\"");
  }

  @Test
  void lineWithoutAValveIsReportedWithThoseThatHaveOne() {
    assertRefuses(
        Run.of("balance", PROJECT, "--valves", "intake"),
        "ball-valves.yaml:16:3",
        "no valve",
        "\"low\", \"high\"");
  }

  @Test
  void noAdjustableValveIsReportedWithTheLinesThatHaveOne() throws IOException {
    assertRefuses(
        Run.of("balance", changed(", adjustable: yes", "")), "adjustable: yes", "\"high\"");
  }

  @Test
  void noTargetAnywhereIsReported() throws IOException {
    assertRefuses(Run.of("balance", changed(", target: 90 gph/in", "")), "target: 3600 gph");
  }

  @Test
  void pumpToBeChosenIsReported() {
    assertRefuses(
        Run.of("balance", PROJECT, "--set", "lines.supply.pump=to be chosen"), "to be chosen");
  }

  @Test
  void valvesNotMarkedMayBeNamed() throws IOException {
    Run run =
        Run.of("balance", changed(", adjustable: yes", ""), "--valves", "low", "--format", "json");
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("\"targetFraction\": 1.029"), run.out());
  }

  @Test
  void strictIsOneWhereThePumpIsTooSmall() {
    String small = "lines.supply.pump=P-180";
    assertEquals(0, Run.of("balance", PROJECT, "--set", small).status());
    assertEquals(1, Run.of("balance", PROJECT, "--set", small, "--strict").status());
    assertEquals(0, Run.of("balance", PROJECT, "--strict").status());
  }

  @Test
  void changesAreShown() {
    String change = "lines.high.pipe.size=2 in";
    assertTrue(
        Run.of("balance", PROJECT, "--set", change)
            .out()
            .contains("Changed with --set: " + change));
    assertTrue(
        Run.of("balance", PROJECT, "--set", change, "--format", "json").out().contains(change));
  }

  @Test
  void pictureIsWrittenBesideTheAnswer() throws IOException {
    Path picture = folder.resolve("share.svg");
    Run run = Run.of("balance", PROJECT, "--chart", picture.toString());
    assertEquals(0, run.status(), run.err());
    assertTrue(Files.readString(picture).contains("of the target"));
    assertRefuses(Run.of("balance", PROJECT, "--chart", PROJECT), "picture");
  }

  @Test
  void valveOfWhichOnlyTheLossIsKnownIsReportedByItsLoss() {
    Run run =
        Run.of("balance", TwinFalls.FOLDER.resolve("falls.yaml").toString(), "--format", "json");
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("\"handle-unknown\""), run.out());
    assertTrue(run.out().contains("\"degreesFromOpen\": null"), run.out());
  }
}
