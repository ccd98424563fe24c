package rillwright.cli.report.json;

/** What members mean that many answers have. */
final class Meaning {
  static final String TITLE = "The title of the project.";
  static final String CHANGED = "Changes made on the command line, as written.";
  static final String FINDINGS = "What the crew should know; may be empty.";
  static final String RUNNING = "What the pumps take; null where it is not known.";
  static final String CURRENCY = "Of all prices; null if none is known.";
  static final String YEARS = "Years over which cost is counted.";
  static final String OFFERED = "Whether the file names no conditions and usual ones are taken.";
  static final String FAULTS = "What is wrong with data sheets that could not be tried.";
  static final String FALLS =
      "What each fall and outlet gets with the valves as they stand, by name.";

  private Meaning() {}
}
