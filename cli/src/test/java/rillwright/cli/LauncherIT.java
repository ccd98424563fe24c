package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The launcher that the build lays beside the jar, moved with what it needs into another folder.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {
  private static final Path EXAMPLES = Path.of("..", "examples").toAbsolutePath();

  @TempDir private Path folder;

  private Path launcher;

  @BeforeEach
  void layItInAFolderWithASpace() throws IOException {
    Path home = Files.createDirectory(folder.resolve("two words"));
    String archive = "rillwright-" + System.getProperty("java.vm.version") + ".jsa";
    for (String file : List.of("rillwright", "rillwright.jar", archive, archive + ".seal")) {
      Path from = PackedJar.FILE.resolveSibling(file);
      Files.copy(from, home.resolve(file), StandardCopyOption.COPY_ATTRIBUTES);
    }
    launcher = home.resolve("rillwright");
  }

  private record Ended(int status, String out, String err) {}

  private Ended run(Path program, Map<String, String> environment, String... arguments)
      throws Exception {
    List<String> command = new ArrayList<>(List.of(program.toString()));
    command.addAll(List.of(arguments));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().putAll(environment);
    int status = builder.start().waitFor();
    return new Ended(status, read(out), read(err));
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @CsvSource({
    "0, solve falls.yaml",
    "1, solve falls.yaml --strict",
    "2, solve nowhere.yaml",
    "3, solve falls.yaml --set points.split.draw=342m3/h",
  })
  void endsAsTheProgramDoes(int status, String words) throws Exception {
    String[] arguments = words.split(" ");
    arguments[1] = EXAMPLES.resolve("twin-falls").resolve(arguments[1]).toString();
    Ended ended = run(launcher, Map.of(), arguments);
    assertEquals(status, ended.status(), ended.out() + ended.err());
  }

  @Test
  void answersAsTheJarThroughALinkToo() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("two words/rillwright"));
    String file = EXAMPLES.resolve("twin-falls/falls.yaml").toString();
    Ended ended = run(link, Map.of(), "solve", file);
    assertEquals("", ended.err());
    assertEquals(read(EXAMPLES.resolve("twin-falls/solve.txt")), ended.out());
  }

  /**
   * One Java machine, which finds its classes in the archive, picocli's too; where it was built.
   */
  @Test
  void takesItsClassesFromTheArchive() throws Exception {
    Path log = folder.resolve("classes.log");
    String text = read(launcher);
    String logged = text.replace("-Xlog:disable", "-Xlog:class+load:file=" + log);
    assertNotEquals(text, logged);
    Path beside = Files.copy(launcher, PackedJar.FILE.resolveSibling("rillwright-logged"));
    try {
      Files.writeString(beside, logged);
      String file = EXAMPLES.resolve("twin-falls/falls.yaml").toString();
      assertEquals(0, run(beside, Map.of(), "solve", file).status());
    } finally {
      Files.delete(beside);
    }
    List<String> ofPicocli =
        Files.readAllLines(log).stream().filter(line -> line.contains(" picocli.")).toList();
    long shared = ofPicocli.stream().filter(line -> line.contains("shared objects file")).count();
    assertTrue(ofPicocli.toString().contains(" picocli.CommandLine source: shared objects file"));
    assertTrue(shared > 100 && shared > 0.9 * ofPicocli.size(), shared + " classes are shared");
  }

  @Test
  void saysThatThereIsNoJava() throws Exception {
    Ended ended = run(launcher, Map.of("JAVA_HOME", folder.toString()), "--version");
    assertEquals(127, ended.status());
    assertEquals(
        "rillwright: no Java found; install Java 17 or later, or set JAVA_HOME\n", ended.err());
  }

  /** Nothing runs it here: its text has what was wrong in it when it was run. */
  @Test
  void itsLikeForWindowsSaysTheSameAndEndsAsTheProgramDoes() throws Exception {
    String windows = read(Path.of("src", "main", "launcher", "rillwright.cmd"));
    String noJava = "echo rillwright: no Java found; install Java 17 or later, or set JAVA_HOME";
    assertTrue(windows.contains(noJava + ">&2\r\nexit /b 127"), windows);
    assertTrue(windows.contains("%JAVA_HOME:\"=%"), "a home in quotes");
    assertTrue(windows.contains("%%~$PATH:"), "no java of the folder that one stands in");
    assertFalse(windows.contains("call "), "takes percent signs out of a path");
    assertTrue(windows.endsWith(" %*\r\n"), "the last status is that of the program");
  }
}
