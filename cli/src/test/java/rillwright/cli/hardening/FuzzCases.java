package rillwright.cli.hardening;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rillwright.cli.interview.AnswersFile;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Draws a file, in three of four cases damaged, and a command that is asked of it: mostly projects,
 * some data sheets, answers to {@code new}, readings, and words of nothing.
 *
 * @param root where the examples lie
 * @param projects the examples
 * @param sheets their data sheets
 */
record FuzzCases(Path root, List<Path> projects, List<Path> sheets) {
  private static final List<String> SETTINGS =
      List.of(
          "run=0 m",
          "pipe.inside=1 mm",
          "valve.open=0 %",
          "run=1e9 ft",
          "pump=to be chosen",
          "pump.speed=200 %",
          "parts=x");

  private static final List<String> TOPICS =
      List.of("file", "readings", "solve", "pipes", "elbow", "lips", "flexible PVC");

  private static final List<String> JOBS =
      List.of("fall", "stream", "two falls", "reservoir", "existing");

  /** Of copies of these examples. */
  static FuzzCases of(Path examples, Path copies) throws IOException {
    List<Path> projects = new ArrayList<>();
    List<Path> sheets = new ArrayList<>();
    try (Stream<Path> files = Files.walk(examples)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        Path copy = copies.resolve(examples.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else if (name.endsWith(".yaml") || name.endsWith(".csv")) {
          Files.copy(file, copy);
          if (Files.readString(copy).contains("\nlines:")) {
            projects.add(copy);
          } else if (name.endsWith(".csv")) {
            sheets.add(copy);
          }
        }
      }
    }
    return new FuzzCases(copies, projects, sheets);
  }

  /** One case. */
  FuzzCase draw(Draw draw) {
    return switch (draw.below(20)) {
      case 0 -> sheet(draw);
      case 1 -> answers(draw);
      case 2 -> draw.chance(0.5) ? readings(draw) : word(draw);
      default -> project(draw);
    };
  }

  private static FuzzCase of(Path file, String text, List<List<String>> commands, Draw draw) {
    byte[] bytes =
        draw.chance(0.75) ? new Damage(draw).of(text) : text.getBytes(StandardCharsets.UTF_8);
    return new FuzzCase(file, () -> bytes, draw.oneOf(commands));
  }

  private FuzzCase project(Draw draw) {
    Path file = draw.oneOf(projects).resolveSibling("tried.yaml");
    boolean isDrawn = draw.chance(0.5);
    String text;
    Map<String, Object> tree;
    if (isDrawn) {
      tree = RandomProject.of(draw.below(Integer.MAX_VALUE));
      text = draw.chance(0.2) ? ProjectTree.json(tree) : ProjectTree.yaml(tree);
    } else {
      text = read(draw.oneOf(projects));
      tree = tree(text);
    }
    String line = draw.oneOf(ProjectTree.linesWith("run", tree));
    String from = root.resolve("long-stream").resolve("supplier").toString();
    List<List<String>> commands = new EveryCommand(file.toString(), line, from).list();
    if (draw.chance(0.1)) {
      String set = "lines." + line + "." + draw.oneOf(SETTINGS);
      commands.forEach(command -> command.addAll(List.of("--set", set)));
      commands.removeIf(command -> command.get(0).equals("weak-trial"));
    }
    return of(file, text, commands, draw);
  }

  private FuzzCase sheet(Draw draw) {
    Path sheet = root.resolve("tried.csv");
    return of(sheet, read(draw.oneOf(sheets)), OtherCommand.ofSheet(sheet), draw);
  }

  /** All lines that the help shows for a job. */
  private FuzzCase answers(Draw draw) {
    Path answers = root.resolve("tried answers.yaml");
    String job = draw.oneOf(JOBS);
    StringBuilder text = new StringBuilder();
    AnswersFile.form()
        .lines()
        .filter(line -> !line.contains("# job: ") || line.endsWith("# job: " + job))
        .map(line -> line.replaceFirst("^job: \\w+", "job: " + job))
        .forEach(line -> text.append(line).append('\n'));
    return of(answers, text.toString(), OtherCommand.ofAnswers(answers), draw);
  }

  private FuzzCase readings(Draw draw) {
    Path home = root.resolve("weak-fall");
    Path readings = home.resolve("tried readings.yaml");
    String project = home.resolve("fall.yaml").toString();
    String text = read(home.resolve("after-test.yaml"));
    return of(readings, text, OtherCommand.ofReadings(project, readings), draw);
  }

  private FuzzCase word(Draw draw) {
    byte[] damaged = new Damage(draw).of(draw.oneOf(TOPICS));
    String word =
        draw.chance(0.5)
            ? draw.oneOf(TOPICS)
            : new String(damaged, StandardCharsets.UTF_8).replace("\0", "");
    return of(root.resolve("tried.txt"), "", OtherCommand.ofWord(word), draw);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> tree(String text) {
    return new YAMLMapper().readValue(text, Map.class);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
