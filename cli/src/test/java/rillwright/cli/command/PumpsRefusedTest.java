package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import rillwright.cli.examples.ExampleSheets;

/** What {@code pumps} cannot work with is reported in words. */
class PumpsRefusedTest extends ScratchSupplier {
  @Test
  void emptyFolderAndNoFolderAreReported() throws IOException {
    Run.of("pumps", LongStream.PROJECT, "--from", list.toString())
        .assertRefused("no data sheet lies");
    Run.of("pumps", LongStream.PROJECT, "--from", folder + "/none")
        .assertRefused("there is no such folder");
    Run.of("pumps", LongStream.PROJECT, "--from", LongStream.PROJECT)
        .assertRefused("name the folder");
    Run.of("pumps", LongStream.PROJECT).assertRefused("--from");
    sheet("bad.csv", "flow,head\n");
    Run.of("pumps", LongStream.PROJECT, "--from", list.toString()).assertRefused("bad.csv:1");
  }

  @Test
  void aFolderWhoseFolderHasThemAndAMisspeltFileAreAnsweredWithWhatIsThere() {
    String examples = "../examples/twin-falls";
    Run.of("pumps", examples + "/falls.yaml", "--from", examples)
        .assertRefused("a folder in it has some: \"../examples/twin-falls/pumps\"");
    Run.of("solve", examples + "/fals.yaml").assertRefused("did you mean \"falls.yaml\"?");
    Run.of("pump", examples + "/falls.yaml").assertRefused("this is a project file");
  }

  @Test
  void noTargetAnywhereIsReportedWithHowToWriteOne() throws IOException {
    sheet("one.csv", SHEET);
    String file =
        file(
            Files.readString(Path.of(LongStream.PROJECT))
                .replace(", target: 9 m3/h", "")
                .replaceAll("(?s)pumps:.*?streams:", "streams:")
                .replace("pump: P-180", "pump: to be chosen"));

    Run.of("pumps", file, "--from", list.toString()).assertRefused("no fall or outlet", "target:");
  }

  @Test
  void unknownLineIsReportedWithTheNearest() throws IOException {
    sheet("one.csv", SHEET);

    Run.of("pumps", LongStream.PROJECT, "--from", list.toString(), "--pump", "suply")
        .assertRefused("did you mean \"supply\"?");
    Run.of("pumps", LongStream.PROJECT, "--from", list.toString(), "--pump", "intake")
        .assertRefused("has no pump");
  }

  @Test
  void severalPumpsNeedALine() throws IOException {
    sheet("one.csv", SHEET);
    String line =
        """

          second:
            from: pond
            to: spill box
            pipe: {material: PVC-U PN 10, size: 75 mm}
            parts: [{pump: P-400}, {run: 30 m}]

        pumps:
        """;
    String second = Files.readString(Path.of(LongStream.PROJECT)).replace("\npumps:\n", line);
    ExampleSheets.layInto(folder, LongStream.FOLDER);
    String file = file(second);

    Run.of("pumps", file, "--from", list.toString()).assertRefused("--pump: supply, second");
    assertEquals(0, Run.of("pumps", file, "--from", list.toString(), "--pump", "second").status());
  }

  @Test
  void numbersThatMakeNoSenseAreRefused() throws IOException {
    sheet("one.csv", SHEET);
    String from = list.toString();

    Run.of("pumps", LongStream.PROJECT, "--from", from, "--max-pumps", "0")
        .assertRefused("--max-pumps is 0");
    Run.of("pumps", LongStream.PROJECT, "--from", from, "--years", "0")
        .assertRefused("--years is 0");
    Run.of("pumps", LongStream.PROJECT, "--from", from, "--chart", "p.gif")
        .assertRefused(".png or .svg");
  }
}
