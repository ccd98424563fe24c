package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.Main;
import rillwright.cli.schema.ResultSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Nobody takes an answer for the file's that is the answer to a change: every command tells it. */
class ChangesReportedTest {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final String SMALL = EXAMPLES.resolve("small-pond/pond.yaml").toString();
  private static final String UNCERTAIN = EXAMPLES.resolve("old-falls/falls.yaml").toString();
  private static final String WEAK = EXAMPLES.resolve("weak-fall/fall.yaml").toString();
  private static final String ON_THE_DAY = EXAMPLES.resolve("old-falls/on-the-day.yaml").toString();
  private static final String VALVES = EXAMPLES.resolve("twin-falls/ball-valves.yaml").toString();
  private static final String CHANGE = "title=Demo 40";

  @TempDir private Path folder;

  static List<List<String>> commands() {
    return List.of(
        List.of("check", SMALL),
        List.of("solve", SMALL),
        List.of("solve", SMALL, "--conditions"),
        List.of("solve", UNCERTAIN, "--condition", "autumn"),
        List.of("duty", SMALL),
        List.of("mend", SMALL),
        List.of("chart", SMALL),
        List.of("section", SMALL),
        List.of("sheet", SMALL),
        List.of("pumps", LongStream.PROJECT, "--from", LongStream.SUPPLIER),
        List.of("pipes", LongStream.PROJECT, "--line", "supply", "--sizes", "75 mm"),
        List.of("odds", UNCERTAIN, "--samples", "100"),
        List.of("balance", VALVES),
        List.of("weak", WEAK),
        List.of("weak", WEAK, "--causes"),
        List.of("stream", LongStream.PROJECT),
        List.of("asbuilt", UNCERTAIN, "--readings", ON_THE_DAY));
  }

  private String[] with(List<String> command, String... more) {
    boolean draws = List.of("chart", "section").contains(command.get(0));
    return Stream.of(
            command.stream(),
            draws ? Stream.of("--to", folder.resolve("c.svg").toString()) : Stream.<String>of(),
            Stream.of(more))
        .flatMap(words -> words)
        .toArray(String[]::new);
  }

  @Test
  void everyCommandThatTakesAChangeIsTriedHere() {
    Set<String> taking =
        Main.commandLine().getSubcommands().entrySet().stream()
            .filter(entry -> entry.getValue().getCommandSpec().findOption("--set") != null)
            .map(Map.Entry::getKey)
            .collect(Collectors.toCollection(TreeSet::new));
    taking.remove("compare"); // its second side says the change: CompareCommandTest

    assertEquals(
        taking,
        commands().stream()
            .map(command -> command.get(0))
            .collect(Collectors.toCollection(TreeSet::new)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("commands")
  void changeIsReportedInText(List<String> command) {
    Run run = Run.of(with(command, "--set", CHANGE));

    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().contains("Changed with --set: " + CHANGE + "\n"), run.out());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("commands")
  void changeIsReportedInJson(List<String> command) {
    Run run = Run.of(with(command, "--set", CHANGE, "--format", "json"));

    assertEquals(0, run.status(), run.err());
    JsonNode changed = new ObjectMapper().readTree(run.out()).path("changed");
    assertEquals(1, changed.size(), run.out());
    assertEquals(CHANGE, changed.get(0).stringValue());
    ResultSchema.assertTakes(run.out());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("commands")
  void nothingIsReportedWhereNothingWasChanged(List<String> command) {
    Run text = Run.of(with(command));
    Run json = Run.of(with(command, "--format", "json"));

    assertEquals(0, text.status(), text.err());
    assertFalse(text.out().contains("Changed with --set"), text.out());
    assertEquals(0, new ObjectMapper().readTree(json.out()).path("changed").size());
  }

  @Test
  void causesThatTellAChangeAreReadBack() throws IOException {
    Run shown = Run.of("weak", WEAK, "--causes", "--set", CHANGE, "--format", "json");
    Path priors = Files.writeString(folder.resolve("priors.json"), shown.out());

    Run back = Run.of("weak", WEAK, "--priors", priors.toString());

    assertEquals(Run.of("weak", WEAK), back);
  }
}
