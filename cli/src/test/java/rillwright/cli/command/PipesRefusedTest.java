package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.examples.ExampleSheets;

/** What {@code pipes} cannot work with is reported in words. */
class PipesRefusedTest {
  @TempDir private Path folder;

  @Test
  void pumpStillToBeChosenNeedsAFolder() throws IOException {
    String planned =
        Files.readString(Path.of(LongStream.PROJECT))
            .replace("pump: P-180", "pump: to be chosen")
            .replaceAll("(?s)pumps:.*?streams:", "streams:");
    String file = Files.writeString(folder.resolve("pond.yaml"), planned).toString();

    Run.of("pipes", file, "--line", "supply", "--sizes", "63 mm").assertRefused("--from FOLDER");
    assertEquals(
        1,
        Run.json(
                "pipes",
                file,
                "--line",
                "supply",
                "--sizes",
                "63 mm",
                "--from",
                LongStream.SUPPLIER)
            .get("candidates")
            .size());
  }

  @Test
  void linesAndSizesThatAreNotThereAreReportedWithWhatIs() {
    Run.of("pipes", LongStream.PROJECT, "--line", "suply", "--sizes", "63 mm")
        .assertRefused("there is no line \"suply\"", "did you mean \"supply\"?");
    Run.of("pipes", LongStream.PROJECT, "--line", "supply", "--sizes", "63 mm, 64 mm")
        .assertRefused("\"64 mm\" is not a size of PVC-U PN 10");
    Run.of("pipes", LongStream.PROJECT, "--line", "supply", "--sizes", "")
        .assertRefused("\"\" is not a size");
    Run.of("pipes", LongStream.PROJECT, "--line", "intake", "--sizes", "63 mm")
        .assertRefused("line \"intake\" has no run of pipe");
    Run.of("pipes", LongStream.PROJECT, "--sizes", "63 mm").assertRefused("--line");
    Run.of("pipes", LongStream.PROJECT, "--line", "supply").assertRefused("--sizes");
  }

  @Test
  void runsWithSizesOfTheirOwnAreReported() throws IOException {
    String text =
        Files.readString(Path.of(LongStream.PROJECT))
            .replace("- run: 36 m", "- run: {length: 36 m, size: 63 mm}")
            .replaceAll("- (fitting|check valve|valve): \\{k", "- $1: {size: 63 mm, k")
            .replace("- gauge: {", "- gauge: {size: 63 mm, ")
            .replace("entrance: {k: 0.5}", "entrance: {k: 0}\n    exit: {k: 0}");
    ExampleSheets.layInto(folder, LongStream.FOLDER);
    String file = Files.writeString(folder.resolve("pond.yaml"), text).toString();

    Run run = Run.of("pipes", file, "--line", "supply", "--sizes", "63 mm, 75 mm");

    run.assertRefused("its pipe size changes nothing");
  }
}
