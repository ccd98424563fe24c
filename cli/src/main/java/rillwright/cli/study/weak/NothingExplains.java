package rillwright.cli.study.weak;

/** No cause that counts can explain anything at a job: none has a prior above 0. */
public final class NothingExplains extends RuntimeException {
  private static final long serialVersionUID = 1;

  NothingExplains() {
    super("no cause that counts has a prior above 0");
  }
}
