package rillwright.cli.study.asbuilt;

/** At no job within the ranges there would be anything to read where something was read. */
public final class NothingFits extends RuntimeException {
  private static final long serialVersionUID = 1;

  NothingFits() {
    super("nothing within the ranges gives these readings");
  }
}
