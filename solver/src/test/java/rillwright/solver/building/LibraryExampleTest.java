package rillwright.solver.building;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** The example of the solver as a library: it compiles, runs, and declares what there is. */
@Isolated
class LibraryExampleTest {
  private static final Path EXAMPLE = Path.of("..", "examples", "library");

  @Test
  void compilesWithoutWarningAndPrintsItsFalls(@TempDir Path folder) throws Exception {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    int status =
        compiler.run(
            null,
            said,
            said,
            "-Xlint:all",
            "-Werror",
            "-proc:none",
            "-encoding",
            "UTF-8",
            "-cp",
            solver().toString(),
            "-d",
            folder.toString(),
            EXAMPLE.resolve("TwoFalls.java").toString());
    assertEquals(0, status, said.toString(StandardCharsets.UTF_8));
    assertEquals(Files.readString(EXAMPLE.resolve("expected.txt")), printedBy(folder));
  }

  /** The classes of the solver alone: that is what a user declares. */
  private static Path solver() throws URISyntaxException {
    return Path.of(
        NetworkBuilder.class.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  private static String printedBy(Path folder) throws Exception {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    URL[] urls = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(urls, NetworkBuilder.class.getClassLoader())) {
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      Class<?> example = loader.loadClass("TwoFalls");
      example.getMethod("main", String[].class).invoke(null, (Object) new String[0]);
    } finally {
      System.setOut(before);
    }
    return printed.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }

  @Test
  void drawsAPondWithPumpRunFittingsValveAndTwoFallsInTwentyStatements() throws Exception {
    List<String> lines = Files.readAllLines(EXAMPLE.resolve("TwoFalls.java"));
    List<String> drawing =
        lines.stream()
            .map(String::strip)
            .dropWhile(line -> !line.startsWith("PumpCurve curve"))
            .takeWhile(line -> !line.isEmpty())
            .toList();
    long calls = drawing.stream().filter(line -> line.matches("\\.\\w+\\(.*|.*;")).count();
    assertTrue(calls <= 20, () -> calls + " calls:\n" + String.join("\n", drawing));
  }

  @Test
  void declaresTheDependencyThatTheBuildMakes() throws Exception {
    String example = Files.readString(EXAMPLE.resolve("pom.xml"));
    String module = Files.readString(Path.of("pom.xml"));
    assertEquals("rillwright-solver", first("<artifactId>(rillwright-solver)</", module));
    String declared = example.substring(example.indexOf("<dependency>"));
    assertEquals("rillwright", first("<groupId>(.*?)</", declared));
    assertEquals("rillwright-solver", first("<artifactId>(.*?)</", declared));
    String parent = module.substring(module.indexOf("<parent>"));
    assertEquals(first("<version>(.*?)</", parent), first("<version>(.*?)</", declared));
  }

  private static String first(String pattern, String text) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    assertTrue(found.find(), pattern);
    return found.group(1);
  }
}
