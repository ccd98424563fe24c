package rillwright.cli.command;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar was built as. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = Rillwright.class.getPackage().getImplementationVersion();
    return new String[] {"rillwright " + (version == null ? "(not packaged)" : version)};
  }
}
