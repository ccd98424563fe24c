package rillwright.cli.file.tree;

import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;

/** What differs between the notations in which a project may be written. */
interface Notation {

  /** A parser of the text. */
  JsonParser parserOf(SourceText source);

  /** What a parser's complaint means, in the user's words. */
  InvalidInput explain(JacksonException complaint, SourceText source);

  /**
   * Refuses what the notation can say and a project may not: names for parts of the file, and
   * types.
   *
   * @param place where the parser's token begins
   */
  void refuseExtras(JsonParser parser, SourceText source, Place place);
}
