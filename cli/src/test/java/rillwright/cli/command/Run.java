package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.stream.Stream;
import rillwright.cli.Main;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** One run of the program: its exit status and what it printed. */
public record Run(int status, String out, String err) {

  /** Runs it. */
  public static Run of(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Main.commandLine(arguments)
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(arguments);
    return new Run(status, out.toString(), err.toString());
  }

  /** The answer to a command in JSON, given without a complaint. */
  static JsonNode json(String... arguments) {
    Run run =
        of(
            Stream.concat(Stream.of(arguments), Stream.of("--format", "json"))
                .toArray(String[]::new));
    assertEquals("", run.err());
    assertEquals(0, run.status());
    return new ObjectMapper().readTree(run.out());
  }

  /** What it wrote without a complaint, in one line, so that no break stands in the way. */
  String flat() {
    assertEquals("", err);
    assertEquals(0, status);
    return out.replaceAll("\\s+", " ");
  }

  /** Words stand in a text. */
  public static void assertReported(String text, String... words) {
    for (String word : words) {
      assertTrue(text.contains(word), word + " in: " + text);
    }
  }

  /** The input was wrong, and words on standard error say so; there is nothing on standard out. */
  void assertRefused(String... words) {
    assertEquals(2, status, out);
    assertEquals("", out);
    assertReported(err, words);
  }

  /** A file among the resources of the tests of commands. */
  static Path resource(String name) {
    return Path.of("src/test/resources/rillwright/cli/command", name);
  }
}
