package rillwright.cli.file.tree;

import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/** YAML 1.2. */
final class YamlNotation implements Notation {
  /** As long as a file may be, bounded by {@link FileBytes}; {@link TreeReader} names twins. */
  static final LoadSettings SETTINGS =
      LoadSettings.builder().setCodePointLimit(FileBytes.MOST).setAllowDuplicateKeys(true).build();

  /** Rebuilt from one as it comes, which reads otherwise than the builder's own. */
  private static final YAMLFactory FACTORY =
      new YAMLFactory().rebuild().loadSettings(SETTINGS).build();

  /** Where the last token began, in characters of the file and in those of Java. */
  private int lastOffset;

  private int lastIndex;

  @Override
  public JsonParser parserOf(SourceText source) {
    return FACTORY.createParser(ObjectReadContext.empty(), new WholeCharacters(source.text()));
  }

  @Override
  public InvalidInput explain(JacksonException complaint, SourceText source) {
    Throwable cause = complaint.getCause();
    if (cause instanceof MarkedYamlEngineException marked) {
      Place found =
          marked
              .getProblemMark()
              .or(marked::getContextMark)
              .map(mark -> placeOf(mark, source))
              .orElse(Places.of(source.name(), complaint.getLocation()));
      Place begun = marked.getContextMark().map(mark -> placeOf(mark, source)).orElse(found);
      return YamlTrouble.explain(marked.getProblem(), found, begun, source.lineBefore(found));
    }
    if (cause instanceof ReaderException reader) {
      return new InvalidInput(
          source.placeAt(reader.getPosition()),
          String.format(
              "the character with the number %04X may not stand in a project file; delete it",
              reader.getCodePoint()));
    }
    return new InvalidInput(
        Places.of(source.name(), complaint.getLocation()),
        "this cannot be read as YAML; every field is written \"name: value\"");
  }

  private static Place placeOf(Mark mark, SourceText source) {
    return new Place(source.name(), mark.getLine() + 1, mark.getColumn() + 1);
  }

  @Override
  public void refuseExtras(JsonParser parser, SourceText source, Place place) {
    if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
      throw new InvalidInput(
          place, "\"*\" repeats another part of the file; write that part out here");
    }
    int offset = (int) parser.currentTokenLocation().getCharOffset();
    String text = source.text();
    if (offset < 0 || offset >= text.length()) {
      return;
    }
    lastIndex = text.offsetByCodePoints(lastIndex, offset - lastOffset);
    lastOffset = offset;
    switch (text.charAt(lastIndex)) {
      case '&' ->
          throw new InvalidInput(
              place,
              "\"&\" gives a part of the file a name to repeat it by; write each part out, or put"
                  + " a text that begins with \"&\" in quotes");
      case '!' ->
          throw new InvalidInput(
              place,
              "\"!\" gives a value a type; leave it out, or put a text that begins with \"!\" in"
                  + " quotes");
      default -> {
        // An ordinary value.
      }
    }
  }
}
