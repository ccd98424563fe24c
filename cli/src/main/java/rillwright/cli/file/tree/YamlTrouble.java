package rillwright.cli.file.tree;

import java.util.List;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.curves.wording.PlainText;

/** What the complaints of a YAML parser mean to somebody who writes a project file. */
final class YamlTrouble {

  /**
   * A complaint and its meaning.
   *
   * @param said a piece of what the parser says
   * @param meaning what it means; {@code %s} stands for where the piece at fault begins
   * @param atBegin whether to point at where that piece begins instead of where the parser stopped
   */
  private record Meaning(String said, String meaning, boolean atBegin) {}

  private static final List<Meaning> MEANINGS =
      List.of(
          new Meaning(
              "mapping values are not allowed",
              "\":\" cannot stand here; look at the indentation of this line and the one before,"
                  + " and put a text that holds \": \" in quotes",
              false),
          new Meaning(
              "TAB", "a tab stands where the line is indented; indent with spaces only", false),
          new Meaning("expected ',' or ']'", "the list that begins here is not closed", true),
          new Meaning("expected ',' or '}'", "the brace that begins here is not closed", true),
          new Meaning(
              "found unexpected end of stream", "the quote that begins here is not closed", true),
          new Meaning(
              "unknown escape character",
              "\"\\\" in double quotes needs a known letter after it; use single quotes for a"
                  + " text with \"\\\"",
              false),
          new Meaning("could not find expected ':'", "\": \" is missing after this name", true),
          new Meaning(
              "sequence entries are not allowed",
              "\"- \" begins a list item and cannot stand here; write a negative number without a"
                  + " space after the sign",
              false),
          new Meaning(
              "expected <block end>",
              "this does not fit what stands before it; look at the indentation, and put a text"
                  + " with quotes or brackets in it in quotes as a whole",
              false),
          new Meaning("expected the node content", "a value is missing before this place", false),
          new Meaning(
              "expected the document start",
              "this stands after the end of the project; a file holds one project",
              false));

  private YamlTrouble() {}

  /**
   * The fault that a complaint is.
   *
   * @param problem what the parser says
   * @param found where it stopped
   * @param begun where the piece at fault begins
   * @param before what stands on the line before where it stopped
   */
  static InvalidInput explain(String problem, Place found, Place begun, String before) {
    if (problem.contains("expected <block end>") || problem.contains("expected ',' or")) {
      if (before.endsWith("'")) {
        return new InvalidInput(
            found,
            "an apostrophe inside '...' ends the text; put the text in double quotes: \"...\"");
      }
      if (before.endsWith("\"")) {
        return new InvalidInput(
            found,
            "a double quote inside \"...\" ends the text; put the text in single quotes: '...'");
      }
    }
    String cannotStart = "that cannot start any token";
    for (Meaning meaning : MEANINGS) {
      if (problem.contains(meaning.said())) {
        return new InvalidInput(meaning.atBegin() ? begun : found, meaning.meaning());
      }
    }
    int quote = problem.indexOf('\'');
    if (problem.contains(cannotStart) && quote >= 0) {
      String character = Character.toString(problem.codePointAt(quote + 1));
      return new InvalidInput(
          found, PlainText.quoted(character) + " cannot begin a value; put the value in quotes");
    }
    return new InvalidInput(
        found, "this cannot be read as YAML; every field is written \"name: value\"");
  }
}
