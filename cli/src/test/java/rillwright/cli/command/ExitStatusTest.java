package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.Main;

class ExitStatusTest {
  private static final String PROJECT = Run.resource("solve/demo-10.yaml").toString();

  @TempDir private Path folder;

  private String file(String text) throws IOException {
    Path file = folder.resolve("pond.yaml");
    Files.writeString(file, text);
    return file.toString();
  }

  private static void assertSays(Run run, int status, String... words) {
    assertEquals(status, run.status(), run.err());
    assertEquals("", run.out(), "nothing is printed where there is no answer");
    for (String word : words) {
      assertTrue(run.err().contains(word), run.err());
    }
    assertFalse(run.err().contains("\tat "), "no stack trace: " + run.err());
  }

  @Test
  void isZeroWhenDone() {
    assertEquals(0, Run.of("solve", PROJECT).status());
    assertEquals(0, Run.of("check", PROJECT, "--format", "json").status());
  }

  @Test
  void isOneForAMissedTargetOnlyWhenStrict() {
    String target = "points.stone lip.target=9000 gph";
    assertEquals(0, Run.of("solve", PROJECT, "--set", target).status());
    Run strict = Run.of("solve", PROJECT, "--set", target, "--strict");
    assertEquals(1, strict.status());
    assertTrue(strict.out().contains("9,000 gph"), "it is reported all the same");
    assertEquals(
        0,
        Run.of("solve", PROJECT, "--set", "points.stone lip.target=500 gph", "--strict").status());
  }

  @Test
  void isOneForAStarvedChamberOnlyWhenStrict() {
    String[] asked = {
      "solve",
      Path.of("src", "test", "resources", "rillwright", "cli", "findings.yaml").toString(),
      "--format",
      "json",
      "--set",
      "points.upper.target=10 gph",
      "--set",
      "points.lower.target=10 gph",
      "--set",
      "lines.intake.skimmer.clogged=90 %",
      "--strict"
    };
    Run strict = Run.of(asked);
    assertTrue(strict.out().contains("starved-chamber"), strict.out());
    assertEquals(1, strict.status());
    assertEquals(0, Run.of(Arrays.copyOf(asked, asked.length - 1)).status());
  }

  @Test
  void isTwoForAFileThatIsNotThere() {
    assertSays(Run.of("solve", "no-such-pond.yaml"), 2, "no-such-pond.yaml");
  }

  @Test
  void isTwoForAnEmptyName() {
    assertSays(Run.of("balance", ""), 2, "\"\": the name of a file is empty; name one");
    assertSays(Run.of("chart", PROJECT, "--to", ""), 2, "\"\": a picture's name ends in .png");
  }

  @Test
  void isTwoForSomethingBehindASwitch() {
    assertSays(Run.of("solve", "--help=3"), 2, "--help: it takes no value, not \"3\"");
    assertSays(Run.of("solve", PROJECT, "--strict=3"), 2, "--strict: it takes no value");
  }

  @Test
  void isTwoForAWrongFileWithThePlaceOfTheFault() throws IOException {
    String file = file(Files.readString(Path.of(PROJECT)).replace("12 ft", "12 fet"));
    assertSays(Run.of("solve", file), 2, "pond.yaml:40:14: ", "12 fet", "ft");
  }

  @ParameterizedTest
  @ValueSource(strings = {"solv", "--frmat", "-x", ""})
  void isTwoForAWordThatIsNoCommand(String word) {
    assertSays(Run.of(word), 2, "--help");
  }

  @Test
  void wrongOptionsAreReportedWithWhatWasMeant() {
    assertSays(Run.of("solv", PROJECT), 2, "solve");
    assertSays(Run.of("solve", PROJECT, "--formt", "json"), 2, "--format");
    assertSays(Run.of("solve", PROJECT, "--format", "jsn"), 2, "\"jsn\"", "json");
    assertSays(Run.of("solve"), 2, "FILE");
    assertSays(
        Run.of(),
        2,
        "missing command; choose one of new, page, check, solve, ",
        ", sheet, catalogue, help");
  }

  @ParameterizedTest(name = "rillwright {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "slove | there is no command \"slove\"; did you mean \"solve\"?",
        "polish | there is no command \"polish\"; choose new, page, check, solve,",
        "weak-trail | there is no command \"weak-trail\"; choose new, page, check, solve, mend,"
            + " duty, chart, section, pump, pumps, pipes, odds …",
        "job1.yaml | give the command before \"job1.yaml\", for example \"rillwright check"
            + " job1.yaml\"",
        "check | FILE is missing; write \"rillwright check FILE\"",
        "check a.yaml b.yaml c.yaml | \"b.yaml\" is one argument too many; write \"rillwright check"
            + " FILE\"",
        "solve --formt json a.yaml | there is no option \"--formt\" of solve; did you mean"
            + " \"--format\"?",
        "solve a.yaml --format | --format needs a value after it: --format FORMAT",
        "chart a.yaml --to a.png --to b.png | --to is given twice; give it once",
        "pumps a.yaml | --from is missing; write \"rillwright pumps FILE --from FOLDER\"",
        "pumps a.yaml --from b --max-pumps two | --max-pumps: \"two\" is not a whole number",
        "mend a.yaml --days week | --days: \"week\" is not a number",
        "pumps a.yaml --from b --years x | --years: \"x\" is not a number",
        "solve a.yaml --format jsn | --format: unknown format \"jsn\"; choose text, html or json"
      })
  void wrongArgumentsAreReportedInPlainWords(String words, String answer) {
    Run run = Run.of(words.split(" "));
    assertEquals(2, run.status());
    assertTrue(run.err().startsWith(answer), run.err());
  }

  @Test
  void eachCommandIsReportedInTheListInOneWholeSentence() {
    Main.commandLine()
        .getSubcommands()
        .forEach(
            (name, command) -> {
              String sentence = command.getCommandSpec().usageMessage().description()[0];
              assertTrue(sentence.endsWith("."), name + ": " + sentence);
              assertTrue(sentence.length() <= 85, name + ": too long for one line: " + sentence);
            });
  }

  @Test
  void argumentsAreHarmlessInMessages() {
    Run run = Run.of("so\u001b[31mlve");
    assertSays(run, 2);
    assertFalse(run.err().contains("\u001b"), "escape sequences are written out");
  }

  @Test
  void isTwoWhereThePumpIsStillToBeChosenAndPointsThere() throws IOException {
    String file =
        file(Files.readString(Path.of(PROJECT)).replace("pump: P-90", "pump: to be chosen"));
    assertSays(Run.of("solve", file), 2, "pond.yaml:28:9: ", "supply", "rillwright duty");
    assertEquals(0, Run.of("check", file).status());
    assertTrue(Run.of("check", file).out().contains("pump to be chosen"));
  }

  @Test
  void changesThatLeadNowhereAreReportedAllAtOnce() {
    Run run =
        Run.of(
            "solve",
            PROJECT,
            "--set",
            "lines.supply.valve.opne=60 %",
            "--set",
            "lines.suply.valve.open=60 %",
            "--set",
            "points.pond.level=2");
    assertSays(
        run,
        2,
        "--set \"lines.supply.valve.opne=60 %\": line \"supply\": valve: there is no field"
            + " \"opne\"",
        "--set \"lines.suply.valve.open=60 %\": there is no \"suply\" in the section \"lines\"",
        "--set \"points.pond.level=2\": point \"pond\": level: \"2\" has no unit");
    assertEquals(3, run.err().lines().count(), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"lines.supply.pump=to be chosen", "lines.supply.pump.model=to be chosen"})
  void whatAChangeDidIsReportedWithTheChange(String change) {
    String place = "--set \"" + change + "\": ";
    assertSays(Run.of("solve", PROJECT, "--set", change), 2, place + "line \"supply\": its pump");
  }

  @ParameterizedTest
  @CsvSource({"us,90000 gph", "metric,342 m3/h"})
  void isThreeWhereDrawsCannotBeMet(String show, String draw) {
    Run run =
        Run.of("solve", PROJECT, "--set", "show=" + show, "--set", "points.manifold.draw=" + draw);
    assertSays(run, 3, "\"manifold\"", "draws " + draw.replace("90000", "90,000"), "Open the way");
    Run inConditions =
        Run.of(
            "solve",
            PROJECT,
            "--conditions",
            "--set",
            "show=" + show,
            "--set",
            "points.manifold.draw=" + draw);
    assertTrue(inConditions.out().contains("draws " + draw.replace("90000", "90,000")));
  }

  @Test
  void aLineWrittenBackwardsIsRemarkedOn() throws IOException {
    String text = Files.readString(Path.of(PROJECT));
    String remark = "A flow with a minus runs against the way in which its line is written.";
    assertFalse(Run.of("solve", file(text)).out().contains(remark));
    String turned =
        text.replace("from: manifold\n    to: stone lip", "from: stone lip\n    to: manifold");
    Run run = Run.of("solve", file(turned));
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains(remark), run.out());
  }

  @Test
  void isThreeForPointsThatNoLineJoinsToOpenWater() throws IOException {
    String file =
        file(
            """
            rillwright: 1
            points:
              pond: {kind: basin, level: 0 m}
              fall: {kind: fall, crest: -1 m, width: 30 cm}
              here: {kind: tee, elevation: 0 m}
              there: {kind: tee, elevation: 0 m}
            lines:
              real:
                from: pond
                to: fall
                pipe: {inside: 50 mm, roughness: 0.01 mm}
                parts: [{run: 3 m}]
              loose:
                from: here
                to: there
                pipe: {inside: 50 mm, roughness: 0.01 mm}
                parts: [{run: 3 m}]
            """);
    assertSays(Run.of("solve", file), 3, "\"here\"", "\"there\"", "open water", "lead a line");
  }

  @Test
  void helpTeachesWithExamples() {
    for (String command : new String[] {"solve", "check"}) {
      Run help = Run.of(command, "--help");
      assertEquals(0, help.status());
      assertTrue(help.out().contains("rillwright " + command + " pond.yaml"), help.out());
    }
    assertTrue(Run.of("--help").out().contains("Exit status: 0 done"));
  }

  @Test
  void theVersionIsReported() {
    Run run = Run.of("--version");
    assertEquals(0, run.status());
    assertTrue(run.out().startsWith("rillwright "), run.out());
  }
}
