package rillwright.cli.report.page;

/** What a piece of text is. */
public enum Tone {
  /** Nothing in particular. */
  PLAIN,
  /** It names what stands below. */
  HEADING,
  /** The same as above it: left out where that is plain to see. */
  AGAIN,
  /** As it should be. */
  GOOD,
  /** It needs care. */
  WARNING,
  /** A blank to write in. */
  TO_WRITE
}
