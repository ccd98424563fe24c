package rillwright.cli.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.Main;
import rillwright.cli.PackedJar;
import rillwright.cli.PackedJar.Ended;

/**
 * Every command from the packed jar, in each form in which it answers, and both kinds of picture:
 * what was left out of the jar is missed here.
 */
@Execution(ExecutionMode.CONCURRENT)
class EveryCommandIT {
  /** Commands and a form without an example whose output is kept, and a picture alone. */
  private static final List<String> OTHERS =
      List.of(
          "catalogue",
          "catalogue --format json",
          "help readings",
          "new --help",
          "page --help",
          "solve fish-pond/pond.yaml --format html",
          "chart fish-pond/pond.yaml --power --to PICTURE",
          "weak-trial weak-fall/fall.yaml --calls 2 --seed 1");

  private static final List<String> DRAWN =
      List.of("balance", "odds", "pipes", "pumps", "stream", "weak");

  @TempDir private Path folder;

  /** The first command line of each command and form that lies with the examples. */
  private static Map<String, ExamplesTest.Run> firsts() throws Exception {
    Map<String, ExamplesTest.Run> firsts = new LinkedHashMap<>();
    for (ExamplesTest.Run run : ExamplesTest.runs()) {
      String form = run.outputFile().substring(run.outputFile().lastIndexOf('.'));
      firsts.putIfAbsent(run.command().split(" ", 2)[0] + form, run);
    }
    return firsts;
  }

  static Stream<ExamplesTest.Run> answers() throws Exception {
    return firsts().values().stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("answers")
  void answersAsTheExamplesSay(ExamplesTest.Run run) throws Exception {
    Ended ended = PackedJar.runWithin(CommandWords.of(run.command(), run.folder().toRealPath()));
    assertEquals(0, ended.status(), ended.err());
    String expected = Files.readString(run.folder().resolve(run.outputFile()));
    if (run.outputFile().endsWith(".json")) {
      JsonLikeness.assertAlike(expected, ended.out());
    } else {
      assertEquals(expected, ended.out());
    }
  }

  static List<String> pictures() throws Exception {
    List<String> pictures = new ArrayList<>();
    for (String command : DRAWN) {
      ExamplesTest.Run run = firsts().get(command + ".txt");
      String few = command.equals("odds") ? " --samples 100" : "";
      pictures.add(run.folder().toRealPath() + "> " + run.command() + few + " --chart PICTURE");
    }
    Path root = ExampleFolders.ROOT.toRealPath();
    OTHERS.forEach(command -> pictures.add(root + "> " + command));
    return pictures;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pictures")
  void drawsAndListsWhatElseThereIs(String folderAndCommand) throws Exception {
    String[] sides = folderAndCommand.split("> ", 2);
    List<String> endings = sides[1].contains("PICTURE") ? List.of("png", "svg") : List.of("none");
    for (String ending : endings) {
      Path picture = folder.resolve("picture." + ending);
      Ended ended =
          PackedJar.runWithin(
              CommandWords.of(
                  sides[1].replace("PICTURE", '"' + picture.toString() + '"'), Path.of(sides[0])));
      assertEquals(0, ended.status(), ended.err());
      assertFalse(ended.err().contains("Exception"), ended.err());
      if (!sides[1].contains("PICTURE")) {
        assertTrue(ended.out().length() > 100, ended.out());
      } else if (ending.equals("png")) {
        assertTrue(ImageIO.read(picture.toFile()).getWidth() > 100);
      } else {
        assertEquals(
            "svg",
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(picture.toFile())
                .getDocumentElement()
                .getTagName());
      }
    }
  }

  @Test
  void noCommandIsForgotten() throws Exception {
    Set<String> tried = new TreeSet<>();
    firsts().keySet().forEach(key -> tried.add(key.substring(0, key.lastIndexOf('.'))));
    OTHERS.forEach(command -> tried.add(command.split(" ", 2)[0]));
    assertEquals(new TreeSet<>(Main.commandLine().getSubcommands().keySet()), tried);
  }
}
