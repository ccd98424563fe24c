package rillwright.cli.schema;

/**
 * A field of a project file, as a person looks it up.
 *
 * @param name with the fields that it stands in, as {@code --set} writes them: {@code rating.flow}
 * @param takes what may be written there, in a few words
 * @param meaning what it is, what is taken without it, an example
 */
public record FieldRow(String name, String takes, String meaning) {}
