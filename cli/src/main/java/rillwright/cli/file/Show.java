package rillwright.cli.file;

/** In which units to print. */
public enum Show {
  /** Feet, inches, US gallons. */
  US,
  /** Metres, litres. */
  METRIC
}
