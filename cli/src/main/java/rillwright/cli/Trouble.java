package rillwright.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.command.output.NoAnswer;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.curves.wording.PlainText;

/**
 * What went wrong, for the one who can mend it, and its exit status.
 *
 * <p>A class and no function: what is made of a function of picocli's old classes leaves them out
 * of the archive of classes.
 */
final class Trouble implements IParameterExceptionHandler, IExecutionExceptionHandler {
  /** The arguments are wrong. */
  @Override
  public int handleParseException(ParameterException e, String[] arguments) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(PlainText.harmless(ArgumentWords.of(e, arguments)));
    err.println(
        "Try \"" + command.getCommandSpec().qualifiedName() + " --help\" for what it takes.");
    err.flush();
    return ExitStatus.WRONG_INPUT;
  }

  /** The command did not come to an end. */
  @Override
  public int handleExecutionException(Exception e, CommandLine command, ParseResult arguments) {
    PrintWriter err = command.getErr();
    int status;
    if (e instanceof InvalidInput invalid) {
      invalid.faults().forEach(fault -> err.println(fault));
      status = ExitStatus.WRONG_INPUT;
    } else if (e instanceof NoAnswer none) {
      err.println(PlainText.harmless(none.getMessage()));
      status = ExitStatus.NO_BALANCE;
    } else {
      boolean trace = arguments.originalArgs().contains("--trace");
      status = defect(e, trace, err);
    }
    err.flush();
    return status;
  }

  /** The program is wrong, or Java has too little memory for the file. */
  static int defect(Throwable e, boolean trace, PrintWriter err) {
    if (e instanceof OutOfMemoryError) {
      err.println(
          "rillwright: Java was given too little memory for this; give it more, for example with"
              + " java -Xmx4g -jar rillwright.jar");
      return ExitStatus.DEFECT;
    }
    StackTraceElement[] stack = e.getStackTrace();
    String at = stack.length == 0 ? "" : " at " + stack[0];
    err.println(
        PlainText.harmless(
            "rillwright: a defect in the program, not in your file ("
                + e
                + at
                + "). Please report this line together with the file; --trace shows details."));
    if (trace) {
      e.printStackTrace(err);
    }
    return ExitStatus.DEFECT;
  }
}
