package rillwright.cli;

import java.io.FileDescriptor;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine;
import rillwright.cli.command.Rillwright;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.report.page.terminal.Screen;
import rillwright.cli.start.QuickStart;

/** The program's entrance. */
public final class Main {
  /** Narrower than this, the commands in a help text would be broken. */
  private static final int LEAST_HELP_WIDTH = 80;

  private Main() {}

  /** Runs a command and ends the process with its exit status. */
  public static void main(String[] arguments) {
    // Pictures are drawn into files: a screen that the environment names may not be there.
    System.setProperty("java.awt.headless", "true");
    QuickStart.endWithParent();
    OptionalInt status = QuickStart.run(arguments);
    System.exit(QuickStart.ending(status.isPresent() ? status.getAsInt() : run(arguments)));
  }

  private static int run(String[] given) {
    String[] arguments = FormerOptions.renewed(given);
    StandardOutput out = StandardOutput.to(FileDescriptor.out);
    StandardOutput err = StandardOutput.to(FileDescriptor.err);
    PrintWriter outWriter = out.writer();
    PrintWriter errWriter = err.writer();
    int status;
    try {
      status = commandLine(arguments).setOut(outWriter).setErr(errWriter).execute(arguments);
    } catch (RuntimeException | Error e) {
      status = Trouble.defect(e, Arrays.asList(arguments).contains("--trace"), errWriter);
    }
    outWriter.flush();
    Optional<String> trouble = out.trouble();
    if (trouble.isPresent()) {
      errWriter.println("rillwright: the output could not be written: " + trouble.get());
      status = ExitStatus.WRONG_INPUT;
    }
    errWriter.flush();
    return status;
  }

  /**
   * The command line with no more commands than these arguments ask for: it starts sooner. Without
   * arguments it has all of them.
   */
  public static CommandLine commandLine(String... arguments) {
    Trouble trouble = new Trouble();
    return Rillwright.withCommandsFor(arguments)
        .setExpandAtFiles(false)
        .setParameterExceptionHandler(trouble)
        .setExecutionExceptionHandler(trouble)
        .setUsageHelpWidth(helpWidth(arguments));
  }

  /** As wide as the terminal where help is asked for: it is looked at only then. */
  private static int helpWidth(String[] arguments) {
    boolean asked = Arrays.asList(arguments).contains("--help");
    Screen screen = asked ? Screen.ofProcess(Screen.Coloring.AUTO) : Screen.PAPER;
    return Math.max(LEAST_HELP_WIDTH, screen.columnsOfProse());
  }
}
