package rillwright.cli.study.choice;

import rillwright.solver.network.LineName;

/** A line in which nothing changes with the size of its pipe. */
public final class SizeWithoutEffect extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient LineName line;

  SizeWithoutEffect(LineName line) {
    super("nothing in line " + line.value() + " changes with the size of its pipe");
    this.line = line;
  }

  /** The line. */
  public LineName line() {
    return line;
  }
}
