package rillwright.cli.command;

import picocli.CommandLine.IVersionProvider;

/**
 * The version and commit that the jar was built as, and the Java machine that runs it. A build
 * outside a clone names no commit.
 */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = Rillwright.class.getPackage().getImplementationVersion();
    return new String[] {
      "rillwright "
          + (version == null ? "(not packaged)" : version.replaceFirst(", commit \\$.*", ""))
          + ", Java "
          + System.getProperty("java.version")
    };
  }
}
