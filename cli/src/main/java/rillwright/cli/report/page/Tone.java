package rillwright.cli.report.page;

/** What a piece of text is. */
public enum Tone {
  /** Nothing in particular. */
  PLAIN,
  /** It names what stands below. */
  HEADING,
  /** As it should be. */
  GOOD,
  /** It needs care. */
  WARNING
}
