package rillwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
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

  /**
   * Runs it within this Java machine, with its own classes and those of Java alone: a second in
   * place of two, and what was left out of the jar is missed all the same.
   */
  public static Ended runWithin(List<String> arguments) throws ReflectiveOperationException {
    Thread thread = Thread.currentThread();
    ClassLoader usual = thread.getContextClassLoader();
    thread.setContextClassLoader(OnlyTheJar.LOADER);
    try {
      StringWriter out = new StringWriter();
      StringWriter err = new StringWriter();
      String[] words = arguments.toArray(new String[0]);
      Object line =
          OnlyTheJar.LOADER
              .loadClass(Main.class.getName())
              .getMethod("commandLine", String[].class)
              .invoke(null, (Object) words);
      line.getClass().getMethod("setOut", PrintWriter.class).invoke(line, new PrintWriter(out));
      line.getClass().getMethod("setErr", PrintWriter.class).invoke(line, new PrintWriter(err));
      int status =
          (int) line.getClass().getMethod("execute", String[].class).invoke(line, (Object) words);
      return new Ended(status, out.toString(), err.toString());
    } finally {
      thread.setContextClassLoader(usual);
    }
  }

  /** Loaded when first asked for: by then the jar lies there. */
  private static final class OnlyTheJar {
    private static final ClassLoader LOADER = loader();

    private static ClassLoader loader() {
      try {
        URL[] jar = {FILE.toUri().toURL()};
        return new URLClassLoader(jar, ClassLoader.getPlatformClassLoader());
      } catch (MalformedURLException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }
}
