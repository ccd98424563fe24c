package rillwright.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import rillwright.cli.Main;

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

  /** A file among the resources of the tests of commands. */
  static Path resource(String name) {
    return Path.of("src/test/resources/rillwright/cli/command", name);
  }
}
