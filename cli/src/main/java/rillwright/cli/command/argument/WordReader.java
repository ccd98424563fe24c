package rillwright.cli.command.argument;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rillwright.curves.wording.Listing;
import rillwright.curves.wording.PlainText;

/** Reads one of some words. */
class WordReader<E extends Enum<E>> implements ITypeConverter<E> {
  private final String what;
  private final Set<E> known;

  /**
   * A reader.
   *
   * @param what the word says
   * @param known what a command takes; as words in small letters
   */
  WordReader(String what, Set<E> known) {
    this.what = what;
    this.known = known;
  }

  @Override
  public E convert(String written) {
    List<String> words = known.stream().map(WordReader::word).toList();
    return known.stream()
        .filter(it -> word(it).equals(written))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "unknown "
                        + what
                        + " "
                        + PlainText.quoted(written)
                        + "; choose "
                        + Listing.either(words)));
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
