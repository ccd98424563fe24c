package rillwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The jar that the build packs, run as a user runs it. */
public final class PackedJar {
  /** Where it lies; Maven runs the tests in the folder of the module. */
  static final Path FILE = Path.of("target", "rillwright.jar").toAbsolutePath();

  /** How a run ended. */
  public record Ended(int status, String out, String err) {}

  private PackedJar() {}

  /**
   * Runs it to its end.
   *
   * @param folder in which to stand; {@code out} and {@code err} are written there
   * @param javaOptions the last is {@code -jar}
   */
  public static Ended run(Path folder, List<String> javaOptions, List<String> arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(javaOptions);
    command.add(FILE.toString());
    command.addAll(arguments);
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
