package rillwright.cli.study.mend.change;

/** What has to be done for a change, the least effort first. */
public enum Work {
  VALVE("valve"),
  CLEANING("cleaning"),
  FITTING("fitting"),
  PUMP("pump"),
  SKIMMER("skimmer"),
  CREST("crest"),
  PIPE("pipe in the ground");

  private final String word;

  Work(String word) {
    this.word = word;
  }

  /** For programs. */
  public String word() {
    return word;
  }

  /** Whether a trench is dug for it. */
  public boolean digs() {
    return this == PIPE;
  }
}
