package rillwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The packed jar where what lies around it is bad: its archive of classes damaged, nobody to read
 * its output, no folder for its scratch files, no screen where the environment names one; and
 * stopped from outside.
 */
@DisabledOnOs(OS.WINDOWS)
class SurroundedJarIT {
  private static final String PROJECT =
      """
      points:
        pond: {kind: basin, level: 0 m, area: 20 m2}
        fall: {kind: fall, crest: 1 m, width: 0.5 m, want: 1 L/s}
      lines:
        up: {from: pond, to: fall, pipe: {inside: 50 mm, roughness: 0.01 mm},
          parts: [{pump: p}, {gauge: {name: G1, elevation: 0 m}}, {run: 5 m .. 6 m},
            {gauge: {name: G2, elevation: 0 m}}]}
      pumps:
        p: {points: [{flow: 0 L/s, head: 4 m}, {flow: 4 L/s, head: 0 m}]}
      """;

  /** Work of many minutes. */
  private static final String LONG = "odds pond.yaml --samples 1000000 --threads 1";

  private static final long MOST_S = 120;

  @TempDir private Path folder;

  private Path archive;

  @BeforeEach
  void layTheJarInAFolder() throws IOException {
    Files.writeString(folder.resolve("pond.yaml"), PROJECT);
    String name = "rillwright-" + System.getProperty("java.vm.version") + ".jsa";
    for (String file : List.of("rillwright", "rillwright.jar", name, name + ".seal")) {
      Files.copy(
          PackedJar.FILE.resolveSibling(file),
          folder.resolve(file),
          StandardCopyOption.COPY_ATTRIBUTES);
    }
    archive = folder.resolve(name);
    assertTrue(archive.toFile().setWritable(true));
  }

  private Process start(String options, String words) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return startShell(java + options + " -jar rillwright.jar " + words);
  }

  private Process startShell(String command) throws IOException {
    ProcessBuilder shell =
        new ProcessBuilder("sh", "-c", "exec " + command)
            .directory(folder.toFile())
            .redirectOutput(folder.resolve("out").toFile())
            .redirectError(folder.resolve("err").toFile());
    shell.environment().remove("JAVA_TOOL_OPTIONS");
    shell.environment().remove("JDK_JAVA_OPTIONS");
    shell.environment().put("DISPLAY", ":99");
    return shell.start();
  }

  private int end(Process process) throws InterruptedException {
    assertTrue(process.waitFor(MOST_S, TimeUnit.SECONDS), "it does not end");
    return process.exitValue();
  }

  private String said(String stream) throws IOException {
    return Files.readString(folder.resolve(stream), StandardCharsets.UTF_8);
  }

  private void assertNoInsides() throws IOException {
    assertFalse(said("err").contains("\tat ") || said("err").contains("Exception"), said("err"));
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> reports = files.filter(file -> file.toString().contains("hs_err")).toList();
      assertEquals(List.of(), reports);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"cut short", "bits flipped", "empty", "without its seal"})
  void aDamagedArchiveChangesNoAnswer(String damage) throws Exception {
    assertEquals(0, end(start("", "solve pond.yaml")), said("err"));
    final String whole = said("out");
    byte[] classes = Files.readAllBytes(archive);
    switch (damage) {
      case "cut short" -> Files.write(archive, Arrays.copyOf(classes, classes.length / 2));
      case "bits flipped" -> {
        for (int at = 1000; at < classes.length; at += 5000) {
          classes[at] ^= 0x10;
        }
        Files.write(archive, classes);
      }
      case "empty" -> Files.write(archive, new byte[0]);
      default -> Files.delete(folder.resolve(archive.getFileName() + ".seal"));
    }
    assertAnswers(start("", "solve pond.yaml"), whole);
    assertAnswers(startShell("./rillwright solve pond.yaml"), whole);
  }

  private void assertAnswers(Process process, String answer) throws Exception {
    assertEquals(0, end(process), said("err"));
    assertEquals(answer, said("out"));
    assertEquals("", said("err"));
    assertNoInsides();
  }

  @ParameterizedTest
  @CsvSource({"> /dev/full, 2", ">&-, 0", "| true, 0"})
  void anOutputThatCannotBeWrittenIsNoDefect(String where, int status) throws Exception {
    assumeFalse(where.contains("full") && Files.notExists(Path.of("/dev/full")));
    int ended = end(start("", "solve pond.yaml " + where));
    assertEquals(status, ended, said("err"));
    assertEquals(status == 2, said("err").contains("the output could not be written"), said("err"));
    assertNoInsides();
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "svg"})
  void aPictureNeedsNoScreenAndNoFolderForScratchFiles(String ending) throws Exception {
    String nowhere = " -Djava.io.tmpdir=/proc/no-such-folder";
    assertEquals(0, end(start(nowhere, "chart pond.yaml --to a." + ending)), said("err"));
    assertTrue(Files.size(folder.resolve("a." + ending)) > 1000);
    assertNoInsides();
  }

  /** Ctrl-C and a termination: 128 and the signal's number, as shells say it; nothing is left. */
  @ParameterizedTest
  @CsvSource({"INT, 130", "TERM, 143"})
  void aSignalEndsLongWork(String signal, int status) throws Exception {
    assumeFalse(signal.equals("INT") && interruptsAreIgnored());
    Process process = start("", LONG);
    ProcessHandle second = secondOf(process);
    send(signal, process.pid());
    assertEquals(status, end(process), said("err"));
    second.onExit().get(MOST_S, TimeUnit.SECONDS);
    assertEquals("", said("out"));
    assertEquals("", said("err"));
    assertNoInsides();
  }

  /** Whether or not it has begun to work. */
  @ParameterizedTest
  @ValueSource(ints = {60, 200, 500})
  void aTerminationInMidStartPrintsNoTrace(int afterMs) throws Exception {
    Process process = start("", "solve pond.yaml");
    Thread.sleep(afterMs);
    process.destroy();
    assertTrue(List.of(0, 143).contains(end(process)), said("err"));
    assertNoInsides();
  }

  /** Where the locale has not the letters of a file's name, it is the locale that is wrong. */
  @ParameterizedTest
  @CsvSource({"C, 2", "C.UTF-8, 0"})
  void aNameBeyondTheLocaleIsSaidToBeSo(String locale, int status) throws Exception {
    String copy = "cp pond.yaml \"$(printf 'sp\\303\\244te.yaml')\"";
    Process copied = new ProcessBuilder("sh", "-c", copy).directory(folder.toFile()).start();
    assertEquals(0, copied.waitFor());
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String inLocale = "env LC_ALL=" + locale + " " + java + " -jar rillwright.jar check sp*.yaml";
    int ended = end(startShell(inLocale));
    assertEquals(status, ended, said("err"));
    assertEquals(status == 2, said("err").contains("the locale of this shell"), said("err"));
    assertNoInsides();
  }

  @Test
  void whenTheFirstMachineIsKilledTheSecondEnds() throws Exception {
    Process process = start("", LONG);
    ProcessHandle second = secondOf(process);
    send("KILL", process.pid());
    end(process);
    second.onExit().get(MOST_S, TimeUnit.SECONDS);
    assertNoInsides();
  }

  /** The machine with the archive, once it is at work. */
  private static ProcessHandle secondOf(Process process) throws InterruptedException {
    while (process.isAlive() && process.descendants().findFirst().isEmpty()) {
      Thread.sleep(50);
    }
    Thread.sleep(2000);
    return process.descendants().findFirst().orElseThrow();
  }

  private static void send(String signal, long pid) throws Exception {
    assertEquals(0, new ProcessBuilder("kill", "-" + signal, "" + pid).start().waitFor());
  }

  /** Whether whoever started this has interrupts ignored, as a shell does in the background. */
  private static boolean interruptsAreIgnored() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (Files.notExists(status)) {
      return false;
    }
    String mask =
        Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("SigIgn:"))
            .findFirst()
            .orElse("SigIgn:\t0");
    return (Long.parseUnsignedLong(mask.substring(8).strip(), 16) & 2) != 0;
  }
}
