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
record Run(int status, String out, String err) {

  static Run of(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        Main.commandLine()
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

  /** The input was wrong, and words on standard error say so; there is nothing on standard out. */
  void assertRefused(String... words) {
    assertEquals(2, status, out);
    assertEquals("", out);
    for (String word : words) {
      assertTrue(err.contains(word), err);
    }
  }

  /** A file among the resources of the tests of commands. */
  static Path resource(String name) {
    return Path.of("src/test/resources/rillwright/cli/command", name);
  }
}
