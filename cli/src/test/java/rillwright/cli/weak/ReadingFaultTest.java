package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.command.Run;

/** Readings that cannot be used, and where that is reported. */
class ReadingFaultTest {
  private static final String JOB = "src/test/resources/rillwright/cli/weak/service-call.yaml";

  @TempDir private Path folder;

  private WeakCall weak(String visit) throws IOException {
    Path file = Files.writeString(folder.resolve("visit.yaml"), visit);
    return WeakCall.about(JOB, "--readings", file.toString());
  }

  private static void assertSays(String message, String... options) {
    WeakCall call = WeakCall.about(WeakCall.JOB, options);
    assertEquals(2, call.status());
    assertEquals(message, call.err().strip());
  }

  /** The first reading of the file is a bucket's: what is set beside it is the mistake. */
  @Test
  void whatIsSetIsBlamedForWhatItSpoils() {
    assertSays(
        "--set \"readings.1.flow=100 gph\": readings 1: two quantities in one reading, flow and"
            + " bucket; make two readings of it",
        "--set",
        "readings.1.flow=100 gph");
    assertSays(
        "--set \"readings.1.gauge=G1\": readings 1: the place of the reading is missing: either"
            + " \"at\" a point, or a gauge, a pump or a line",
        "--set",
        "readings.1.gauge=G1");
  }

  /** The fifth is the level of the chamber, 0.4 in below the datum. */
  @Test
  void checkAsksAboutAWrongSignToo() {
    Run run = Run.of("check", WeakCall.JOB, "--set", "readings.5.level=9.4 in");
    assertEquals(2, run.status());
    assertEquals(
        "--set \"readings.5.level=9.4 in\": readings 5: level: \"9.4 in\" is above all water of"
            + " this job; levels are counted upward from the file's datum; is it \"-9.4 in\"? Below"
            + " the pond's level it can be written \"below pond: 9.4 in\"",
        run.err().strip());
  }

  @Test
  void aListCannotBeSet() {
    assertSays(
        "--set \"signs=sudden\": signs: expected a list, and a list cannot be set; write it into"
            + " the file",
        "--set",
        "signs=sudden");
    assertSays(
        "--set \"signs=[sudden]\": a list is set in the file; a change sets one value: 40 %, ball,"
            + " 3 in",
        "--set", "signs=[sudden]");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{at: fal, flow: 2 L/s} | :2:10: readings 1: at: there is no point \"fal\"; did you mean"
            + " \"fall\"?",
        "{at: pond, crest head: 9 mm} | :2:10: readings 1: at: a crest head is read at a fall, and"
            + " \"pond\" is not one; it could be fall",
        "{gauge: G7, pressure: 3 psi} | :2:13: readings 1: gauge: there is no gauge \"G7\"; did you"
            + " mean \"G1\" or \"G2\"?",
        "{gauge: G1, pressure: 3 psi, when: valve shut, valve: intake} | :2:59: readings 1: valve:"
            + " line \"intake\" has no valve; one with it: supply",
        "{pump: intake, power: 300 W} | :2:12: readings 1: pump: line \"intake\" has no running"
            + " pump; one with it: supply",
        "{gauge: G1, pressure: 3 psi, when: valve shut} | :2:5: readings 1: \"valve\" is missing;"
            + " write for example \"valve: supply\"",
        "{at: fall, flow: 100 gph, time: 6 s} | :2:37: readings 1: time: a time goes with"
            + " \"bucket\" here; with flow take it out",
        "{at: fall, flow: 100 gph, in: 6 s} | :2:35: readings 1: in: a time goes with \"drops\""
            + " here; with flow take it out",
        "{at: fall, bucket: 5 gal, time: 5 s, in: 3 s} | :2:46: readings 1: in: a time goes with"
            + " \"drops\" here; with bucket take it out",
        "{at: fall, flow: 100 gph, valve: supply} | :2:38: readings 1: valve: a valve is named only"
            + " with \"when: valve shut\" or \"valve at\"",
        "{at: fall, bucket: 5 gal, time: 5 s, flow: 100 gph} | :2:5: readings 1: two quantities in"
            + " one reading, flow and bucket; make two readings of it",
        "{at: fall, crest head: 1 in, brink: 1 in} | :2:5: readings 1: two quantities in one"
            + " reading, crest head and brink; make two readings of it",
        "{at: fall} | :2:5: readings 1: the quantity that was read is missing: one of flow, bucket,"
            + " crest head, brink, pressure, level, power, drops, below pond, volts, falls, seen",
        "{at: chamber, level: 5 in} | :2:26: readings 1: level: \"5 in\" is above all water of this"
            + " job; levels are counted upward from the file's datum; is it \"-5 in\"? Below the"
            + " pond's level it can be written \"below pond: 5 in\"",
        "{at: pond, level: 120 mm} | :2:23: readings 1: level: \"120 mm\" is above all water of"
            + " this job; levels are counted upward from the file's datum; is it \"-120 mm\"? Below"
            + " the pond's level it can be written \"below pond: 120 mm\"",
        "{at: chamber, below pond: -5 in} | :2:31: readings 1: below pond: \"-5 in\" is not"
            + " possible; it must be 0 or more",
        "{at: fall, drops: 40 mm, in: 12 s} | :2:10: readings 1: at: a drop of the level is read at"
            + " a chamber, and \"fall\" is not one; it could be chamber",
        "{at: chamber, drops: 40 mm, in: 12 s} | :2:10: readings 1: at: a drop of the level needs"
            + " the area of \"chamber\"; write for example \"area: 3 ft2\" at that chamber",
        "{line: suply, flow: 2300 gph} | :2:12: readings 1: line: there is no line \"suply\"; did"
            + " you mean \"supply\"?",
        "{line: supply, bucket: 5 gal, time: 5 s} | :2:5: readings 1: \"at\" is missing; write for"
            + " example \"at: pond\"",
        "{at: fall, bucket: 5 gal} | :2:5: readings 1: \"time\" is missing; write for example"
            + " \"time: 6 s\"",
      })
  void readingsThatMakeNoSenseAreReportedWhere(String reading, String message) throws IOException {
    WeakCall call = weak("readings:\n  - " + reading + "\n");
    assertEquals(2, call.status());
    assertTrue(call.err().strip().endsWith("visit.yaml" + message), call.err());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{look: net, at: supply, seen: dirty} | there is no net at \"supply\"; choose intake",
        "{look: net, at: intake, seen: wet} | seen: \"wet\" is not known; choose clean, dirty",
        "{look: net, at: intake, seen: dirty, within: 3 %} | a look has no error of its own",
        "{look: nets, at: intake, seen: dirty} | did you mean \"net\"",
        "{at: intake, seen: dirty} | \"look\" is missing",
        "{pump: supply, volts: 3 A} | \"A\" is not a unit that is known; choose V",
        "{at: pond, falls: 3 mm} | expected a fall of the level (mm/h, in/h)",
        "{at: fall, crest head: 1 in, where: box} | only a flow or a bucket is read at a box"
      })
  void looksThatMakeNoSenseAreReported(String reading, String message) throws IOException {
    Path visit = folder.resolve("visit.yaml");
    Files.writeString(visit, "readings:\n  - " + reading + "\n");
    WeakCall call = WeakCall.about(WeakCall.JOB, "--readings", visit.toString());
    assertEquals(2, call.status());
    assertTrue(call.err().contains("visit.yaml:2:") && call.err().contains(message), call.err());
  }

  @Test
  void readingsThatContradictEachOtherAreReportedWhere() throws IOException {
    WeakCall call =
        weak(
            """
            readings:
              - {at: fall, flow: 2.3 L/s, within: 5 %}
              - {at: fall, bucket: 20 L, time: 5.9 s, within: 5 %}
            """);
    assertEquals(2, call.status());
    assertTrue(
        call.err().contains(":3:5: readings 2: this contradicts the reading of the same quantity"),
        call.err());
    assertTrue(call.err().contains("in line 2, column 5"), call.err());
  }

  @Test
  void signsThatExcludeEachOtherAreRefused() throws IOException {
    WeakCall call = weak("readings: []\nsigns: [bubbles, no bubbles]\n");
    assertEquals(2, call.status());
    assertTrue(call.err().contains("\"no bubbles\" contradicts \"bubbles\""));
  }
}
