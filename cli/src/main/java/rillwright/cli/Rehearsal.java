package rillwright.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.util.List;

/**
 * Goes through the short commands once, unseen, so that the build can archive the classes that they
 * need.
 *
 * @see rillwright.cli.start.QuickStart
 */
public final class Rehearsal {
  private Rehearsal() {}

  /**
   * Runs the commands on a project.
   *
   * @param arguments the project file
   */
  public static void main(String[] arguments) {
    String file = arguments[0];
    List<List<String>> commands =
        List.of(
            List.of("solve", file),
            List.of("solve", file, "--format", "json"),
            List.of("solve", file, "--conditions"),
            List.of("check", file),
            List.of("duty", file),
            List.of("solve", file, "--set", "title=Rehearsal"),
            List.of("solve", "no such file"),
            List.of("solve", "--help"),
            List.of("catalogue"));
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    for (List<String> command : commands) {
      Main.commandLine(command.toArray(String[]::new))
          .setOut(nowhere)
          .setErr(nowhere)
          .execute(command.toArray(String[]::new));
    }
  }
}
