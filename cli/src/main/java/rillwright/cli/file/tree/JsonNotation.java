package rillwright.cli.file.tree;

import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.curves.wording.PlainText;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;

/** JSON. */
final class JsonNotation implements Notation {
  /** A file is small; its names and numbers may be as long as it is. */
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNameLength(FileBytes.MOST)
                  .maxNumberLength(FileBytes.MOST)
                  .build())
          .build();

  @Override
  public JsonParser parserOf(SourceText source) {
    return FACTORY.createParser(ObjectReadContext.empty(), source.text());
  }

  @Override
  public InvalidInput explain(JacksonException complaint, SourceText source) {
    TokenStreamLocation at = complaint.getLocation();
    Place place = Places.of(source.name(), at);
    return new InvalidInput(place, "this is not JSON: " + trouble(complaint, source));
  }

  private static String trouble(JacksonException complaint, SourceText source) {
    if (complaint instanceof UnexpectedEndOfInputException) {
      return "the file ends before every bracket and quote is closed";
    }
    String said = complaint.getOriginalMessage();
    String first = source.text().stripLeading();
    if (!first.startsWith("{")) {
      return "a project in JSON begins with \"{\"; if it is YAML, end the file's name in .yaml";
    }
    if (said.startsWith("Unrecognized token '")) {
      String token = said.substring("Unrecognized token '".length()).split("'", 2)[0];
      return PlainText.quoted(token) + " needs quotes around it";
    }
    if (said.startsWith("Unexpected character ('")) {
      int code = said.codePointAt("Unexpected character ('".length());
      return PlainText.quoted(Character.toString(code))
          + " is not expected here; look for a missing quote, comma or bracket before it";
    }
    return "it cannot be read from here on; look for a missing quote, comma or bracket";
  }

  @Override
  public void refuseExtras(JsonParser parser, SourceText source, Place place) {
    // JSON has none.
  }
}
