package rillwright.cli.schema;

import java.util.List;

/**
 * A field of a project file, as a person looks it up.
 *
 * @param name with the fields that it stands in, as {@code --set} writes them: {@code rating.flow}
 * @param takes what may be written there, in a few words
 * @param meaning what it is, what is taken without it, an example
 * @param words that may be chosen there, none where anything else can be written; copied
 */
public record FieldRow(String name, String takes, String meaning, List<String> words) {
  public FieldRow {
    words = List.copyOf(words);
  }
}
