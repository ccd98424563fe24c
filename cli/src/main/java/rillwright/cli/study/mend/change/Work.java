package rillwright.cli.study.mend.change;

import java.util.Arrays;

/** What has to be done for a change, the least effort first. */
public enum Work {
  VALVE("valve"),
  CLEANING("cleaning"),
  LEVEL("water level"),
  FITTING("fitting"),
  PUMP("pump"),
  SKIMMER("skimmer"),
  CREST("crest"),
  OVERFLOW("overflow"),
  POND("pond"),
  PIPE("pipe in the ground");

  private final String word;

  Work(String word) {
    this.word = word;
  }

  /** A number to add up and to compare by: how many take less. */
  public int effort() {
    return Arrays.asList(values()).indexOf(this);
  }

  /** For programs. */
  public String word() {
    return word;
  }

  /** Whether the ground is dug for it. */
  public boolean digs() {
    return this == PIPE || this == POND;
  }
}
