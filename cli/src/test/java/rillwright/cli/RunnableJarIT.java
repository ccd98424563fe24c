package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.PackedJar.Ended;

/** The jar as a user runs it, from a folder of his own; runs after the jar is packed. */
class RunnableJarIT {
  private static final Path EXAMPLE =
      Path.of("..", "examples", "twin-falls").toAbsolutePath().normalize();

  private static final long MOST_BYTES = 7_300_000;

  @TempDir private Path folder;

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
  void holdsNoMoreThanItNeeds() throws Exception {
    assertTrue(Files.size(PackedJar.FILE) <= MOST_BYTES, Files.size(PackedJar.FILE) + " bytes");
  }

  @Test
  void theBuildLaysAnArchiveForItsOwnJavaMachine() {
    String name = "rillwright-" + System.getProperty("java.vm.version") + ".jsa";
    assertTrue(Files.isRegularFile(PackedJar.FILE.resolveSibling(name)), name);
  }

  private Ended run(List<String> javaOptions, String... arguments) throws Exception {
    return PackedJar.run(folder, javaOptions, List.of(arguments));
  }
}
