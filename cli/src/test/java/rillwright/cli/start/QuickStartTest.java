package rillwright.cli.start;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuickStartTest {
  private static final String MACHINE = "17.0.1+2";
  private static final Path JAVA_HOME = Path.of("jdk");

  @TempDir private Path folder;

  private String jar;
  private Path archive;

  @BeforeEach
  void layJarAndArchiveSideBySide() throws IOException {
    jar = folder.resolve("rillwright.jar").toString();
    archive = Files.writeString(folder.resolve("rillwright-17.0.1+2.jsa"), "some classes");
    ClassArchive.main(new String[] {archive.toString()});
  }

  @Test
  void aPlainCallStartsTheSameWithTheArchive() {
    assertEquals(
        List.of(
            JAVA_HOME.resolve("bin").resolve("java").toString(),
            "-XX:SharedArchiveFile=" + folder.resolve("rillwright-17.0.1+2.jsa"),
            "-XX:+VerifySharedSpaces",
            "-XX:+IgnoreUnrecognizedVMOptions",
            "-XX:+UnlockDiagnosticVMOptions",
            "-XX:ArchiveRelocationMode=0",
            "-Xshare:auto",
            "-Xlog:disable",
            "-XX:+DisplayVMOutputToStderr",
            "-Drillwright.parent=" + ProcessHandle.current().pid(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-XX:-UsePerfData",
            "-jar",
            jar,
            "solve",
            "my pond.yaml"),
        command(MACHINE, Map.of(), "solve", "my pond.yaml"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"some classe", "some classes ", ""})
  void anArchiveThatIsNotWholeIsNotUsed(String content) throws IOException {
    Files.writeString(archive, content);
    assertEquals(List.of(), command(MACHINE, Map.of(), "solve", "pond.yaml"));
  }

  @Test
  void anArchiveWithoutItsSealIsNotUsed() throws IOException {
    Files.delete(folder.resolve("rillwright-17.0.1+2.jsa.seal"));
    assertEquals(List.of(), command(MACHINE, Map.of(), "solve", "pond.yaml"));
  }

  @Test
  void anotherJavaMachineStartsAsItIs() {
    assertEquals(List.of(), command("21.0.1+2", Map.of(), "solve", "pond.yaml"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"})
  void optionsOfTheUserAreKept(String variable) {
    assertEquals(List.of(), command(MACHINE, Map.of(variable, "-Xmx1g"), "solve", "pond.yaml"));
    String[] own = {"-Xmx1g", "-jar", jar, "solve"};
    assertEquals(
        List.of(),
        QuickStart.commandFor(own, new String[] {"solve"}, Map.of(), JAVA_HOME, MACHINE));
  }

  @Test
  void thePreparedMachineDoesNotStartAThird() {
    List<String> command = command(MACHINE, Map.of(), "solve", "pond.yaml");
    String[] own = command.subList(1, command.size()).toArray(String[]::new);
    String[] arguments = {"solve", "pond.yaml"};
    assertEquals(List.of(), QuickStart.commandFor(own, arguments, Map.of(), JAVA_HOME, MACHINE));
  }

  private List<String> command(
      String machine, Map<String, String> environment, String... arguments) {
    String[] own =
        Stream.concat(Stream.of("-jar", jar), Stream.of(arguments)).toArray(String[]::new);
    return QuickStart.commandFor(own, arguments, environment, JAVA_HOME, machine);
  }
}
