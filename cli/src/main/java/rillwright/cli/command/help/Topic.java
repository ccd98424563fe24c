package rillwright.cli.command.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the program explains beside its commands; the text of each is a resource of its name. */
enum Topic {
  FILE,
  QUANTITIES,
  RANGES,
  POINTS,
  LINES,
  PARTS,
  SHEETS,
  PRICES,
  STREAMS,
  CONDITIONS,
  READINGS,
  ANSWERS,
  EXIT,
  WORDS;

  private static final String FOLDER = "/rillwright/help/";

  /** As a user writes it. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The words of all. */
  static List<String> words() {
    return Arrays.stream(values()).map(Topic::word).toList();
  }

  /** The topic of a word, or of one of its page's title. */
  static Optional<Topic> find(String word) {
    String plain = word.toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(it -> it.word().equals(plain) || (it == QUANTITIES && plain.matches("units?")))
        .findFirst();
  }

  /** Its text, from its title on. */
  List<String> lines() {
    String file = FOLDER + word() + ".txt";
    try (InputStream stream = Topic.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalStateException(file + " is missing from the program");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** Its first line. */
  String title() {
    return lines().get(0);
  }
}
