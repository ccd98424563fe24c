package rillwright.cli.examples;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of a command line, quotes kept together, with files found in a folder; the first is the
 * command.
 */
final class CommandWords {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private CommandWords() {}

  static List<String> of(String command, Path folder) {
    Matcher matcher = WORD.matcher(command);
    return matcher
        .results()
        .map(
            word -> {
              boolean isCommand = word.start() == 0;
              String plain = word.group(2);
              return plain == null ? word.group(1) : isCommand ? plain : inFolder(plain, folder);
            })
        .toList();
  }

  private static String inFolder(String word, Path folder) {
    Path file = folder.resolve(word);
    return Files.exists(file) ? file.toString() : word;
  }
}
