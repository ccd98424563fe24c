package rillwright.cli.command;

import java.io.PrintWriter;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rillwright.cli.report.text.Ink;

/** In which form a command answers, and the answer's way to standard output. */
final class ReportArguments {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.Reader.class,
      description = "text (default) or json.")
  private Format format = Format.TEXT;

  @Mixin
  @SuppressWarnings("UnusedVariable") // read by picocli
  private StandardOptions standard;

  boolean isJson() {
    return format == Format.JSON;
  }

  /** Prints the answer in the form asked for. */
  void print(Supplier<String> json, Function<Ink, String> text) {
    print(isJson() ? json.get() : text.apply(Ink.ofTerminal()));
  }

  /** Prints an answer. */
  void print(String report) {
    PrintWriter out = command.commandLine().getOut();
    out.print(report);
    out.flush();
  }
}
