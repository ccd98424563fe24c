package rillwright.cli.command.argument;

import picocli.CommandLine.Option;

/** What every command takes. */
public final class StandardOptions {
  @Option(names = "--help", usageHelp = true, description = "Shows this help and exits.")
  @SuppressWarnings("UnusedVariable") // set and read by picocli
  private boolean help;

  @Option(names = "--trace", description = "Shows details if the program itself fails.")
  @SuppressWarnings("UnusedVariable") // looked up among the arguments when something fails
  private boolean trace;
}
