package rillwright.solver.study.diagnosis.job;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What somebody sees who looks: each is in order or not. Minutes are common practice, no source.
 */
public enum Look {
  /** The net downstream of a skimmer, lifted; in a line. */
  NET("net", "clean", "dirty", 2),
  /** A filter, its lid off; in a line. */
  FILTER("filter", "clean", "dirty", 5),
  /** Any other part that takes head, opened: a lamp's quartz, a heater, a strainer; in a line. */
  PART("part", "clean", "dirty", 10),
  /** The mats in the spill box at the end of a line. */
  MATS("mats", "clean", "dirty", 2),
  /** The ground over a line or at a tee. */
  GROUND("ground", "dry", "wet", 2),
  /** The crest of a fall. */
  CREST("crest", "even", "dry end", 1),
  /** The stones behind the sheet of a fall. */
  ROCKS("rocks", "dry", "wet", 2),
  /** The water of a chamber from which a pump draws. */
  CHAMBER("chamber", "calm", "bubbles", 1);

  private final String word;
  private final String inOrder;
  private final String amiss;
  private final int minutes;

  Look(String word, String inOrder, String amiss, int minutes) {
    this.word = word;
    this.inOrder = inOrder;
    this.amiss = amiss;
    this.minutes = minutes;
  }

  /** At what one looks: "net". */
  public String word() {
    return word;
  }

  /** What is seen if all is well: "clean". */
  public String inOrder() {
    return inOrder;
  }

  /** What is seen if not: "dirty". */
  public String amiss() {
    return amiss;
  }

  /** How long it takes. */
  public int minutes() {
    return minutes;
  }

  /** All words for what is seen. */
  public List<String> seen() {
    return List.of(inOrder, amiss);
  }

  /** The look of a word. */
  public static Optional<Look> find(String word) {
    return Arrays.stream(values()).filter(look -> look.word.equals(word)).findFirst();
  }
}
