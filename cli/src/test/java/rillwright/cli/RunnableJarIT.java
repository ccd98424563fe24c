package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as a user runs it, from a folder of his own; runs after the jar is packed. */
class RunnableJarIT {
  private static final Path JAR = Path.of("target", "rillwright.jar").toAbsolutePath();
  private static final Path EXAMPLE =
      Path.of("..", "examples", "twin-falls").toAbsolutePath().normalize();

  @TempDir private Path folder;

  private record Ended(int status, String out, String err) {}

  @Test
  void solvesAnExampleFromAnywhere() throws Exception {
    Ended ended = run(List.of("-jar"), "solve", EXAMPLE.resolve("falls.yaml").toString());
    assertEquals(new Ended(0, Files.readString(EXAMPLE.resolve("solve.txt")), ""), ended);
  }

  @Test
  void printsTheSameWithoutItsArchive() throws Exception {
    Path project = EXAMPLE.resolve("falls.yaml");
    Ended quick = run(List.of("-jar"), "solve", project.toString(), "--format", "json");
    Ended plain =
        run(List.of("-Xshare:auto", "-jar"), "solve", project.toString(), "--format", "json");
    assertEquals(plain, quick);
    assertEquals(0, quick.status());
  }

  @Test
  void handsOnTheExitStatus() throws Exception {
    Ended ended = run(List.of("-jar"), "solve", "nowhere.yaml");
    assertEquals(2, ended.status());
    assertEquals("", ended.out());
    assertTrue(ended.err().startsWith("nowhere.yaml: "), ended.err());
  }

  @Test
  void theBuildLaysAnArchiveForItsOwnJavaMachine() {
    String name = "rillwright-" + System.getProperty("java.vm.version") + ".jsa";
    assertTrue(Files.isRegularFile(JAR.resolveSibling(name)), name);
  }

  private Ended run(List<String> javaOptions, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(javaOptions);
    command.add(JAR.toString());
    command.addAll(List.of(arguments));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    builder.environment().remove("JDK_JAVA_OPTIONS");
    int status = builder.start().waitFor();
    return new Ended(status, read(out), read(err));
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }
}
